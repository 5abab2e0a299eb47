package dev.ledgerwing.core.words;

import dev.ledgerwing.core.build.ElementKind;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What builders call the fields of the record. A constant is called like the field, {@code TARGET_MASS} for
 * {@code targetMass}; fields of one name mean one thing in every record. More than forty lines because the record has that many fields.
 */
public enum FieldWord {
    ABOARD("was aboard", ElementKind.LINE),
    ABSENT("stays at home", ElementKind.LINE),
    ACTS_ON_LOSS("who acts when the signal is lost", "not known", ""),
    AFT_PERCENT_MAC("aft limit", "none", " % MAC"),
    AFT_X("aft limit", "none", ""),
    AIR_C("temperature of the air", "not known", " °C"),
    ANALOG_INPUTS("analogue inputs"),
    APEX("leading edge of the root"),
    ARM_UNCERTAINTY("uncertainty of the supports' places"),
    ARRAY("solar cells", "none", ""),
    ASSEMBLY("assembly", ElementKind.ASSEMBLY),
    AT_LEAST("at least"),
    AUTOMATIC_CUT_OFF("stops charging by itself when full"),
    AWG("wire gauge", "not known", " AWG"),
    BALANCE_LIMITS("balance limits", "none declared", ""),
    BANKS("banks of outputs", "not known", ""),
    BASIS("basis"),
    BOARD("flight controller", ElementKind.BOARD),
    BOARD_LEARNS_BY("flight controller learns of it by", "not known", ""),
    BODY_SHIFT_PERCENT_MAC("shift of the neutral point by the body", "the default", " % MAC"),
    BOOKING("booked"),
    BUILD_PERCENT("reserve at stage Build", "", " %"),
    BURST_C("current for moments", "not known", " C"),
    BY("given up by"),
    CALCULATED_CORRELATION("correlation of calculated masses"),
    CALCULATED_PERCENT("uncertainty of a calculated mass", "", " %"),
    CAN_BUSES("CAN buses"),
    CAN_NODES("nodes on the bus"),
    CARRIES("carries", "nothing", ""),
    CATALOGUE_CORRELATION("correlation of catalogue masses"),
    CATALOGUE_PERCENT("uncertainty of a catalogue mass", "", " %"),
    CATEGORY("category"),
    CEILING_IS("the ceiling means", "nothing", ""),
    CEILING_MASS("ceiling", "none", ""),
    CELL_CAPACITY_MAH("capacity of one cell", "not known", " mAh"),
    CELL_EMPTY_V("empty cell", "as its chemistry", " V"),
    CELL_FULL_V("full cell", "as its chemistry", " V"),
    CELL_MILLIOHM("inner resistance of one cell", "not known", " mΩ"),
    CELL_NOMINAL_V("nominal cell voltage", "as its chemistry", " V"),
    CHAIN_PERCENT("left behind wires, dirt and mismatch", "not known", " %"),
    CHANNELS("channels"),
    CHARGING_POSSIBLE("charging possible"),
    CHEMISTRY("cells"),
    CODE("code"),
    COLDEST_CELL_C("coldest solar cells", "the default", " °C"),
    CONCEPT_PERCENT("reserve at stage Concept", "", " %"),
    CONDUCTORS("wires in the run"),
    CONNECTION("connected"),
    CONNECTOR_RESERVE_PERCENT("reserve of connectors", "the default", " %"),
    CONTINUOUS_C("continuous current", "not known", " C"),
    CONTROL("control", ElementKind.CONTROL),
    CONTROLLER_RESERVE_PERCENT("reserve of motor controllers", "the default", " %"),
    COST_EACH("cost each", "not noted", ""),
    COUNT("side by side"),
    CRITICALITY("what hangs on it"),
    DATE("date"),
    DATUM("datum"),
    DECODED_BY("told apart by", "not known", ""),
    DEMAND_BY_PHASE("asked for", ElementKind.PHASE),
    DESIGN("design case"),
    DESIGN_PERCENT("reserve at stage Design", "", " %"),
    DIHEDRAL_DEG("dihedral", "not known", "°"),
    DIODE_RESERVE_PERCENT("reserve of diodes", "the default", " %"),
    DRAWS("draws"),
    DRIVES("drives", "nothing", ""),
    DROPOUT_V("input above output by", "not known", " V"),
    DROP_LIMIT_PERCENT("voltage lost at most", "the default", " %"),
    DUTY_BY_PHASE("runs", ElementKind.PHASE),
    EFFICIENCY("efficiency of the tail"),
    EFFICIENCY_PERCENT("efficiency of the regulator", "not known", " %"),
    ELECTRICAL("electrical load", "none", ""),
    ELEMENTS("elements", "none", ""),
    ELEVATION_M("height above the sea", "not known", " m"),
    EXCLUSIVE_GROUP("never draws together with group", "none", ""),
    EXTRA("carried besides", "nothing", ""),
    FACES_DEG("leans to", "not known", "°"),
    FINGERPRINT("fingerprint"),
    FIRST("first part", ElementKind.LINE),
    FLIGHT_TEST_PERCENT("reserve at stage Flight test", "", " %"),
    FORWARD_PERCENT_MAC("forward limit", "none", " % MAC"),
    FORWARD_V("forward voltage", "not known", " V"),
    FORWARD_X("forward limit", "none", ""),
    FRAME_US("frame", "as long as it takes", " µs"),
    FROM("from"),
    FROM_X("from"),
    FROM_Y("from the left", "not limited", ""),
    FROM_Z("from below", "not limited", ""),
    FUNCTION("function", ElementKind.FUNCTION),
    FUSE_RESERVE_PERCENT("reserve of fuses and breakers", "the default", " %"),
    GROWTH("growth table"),
    GROWTH_PERCENT("growth allowance", "by the growth table", " %"),
    GUESSED_CORRELATION("correlation of guessed masses"),
    GUESSED_PERCENT("uncertainty of a guessed mass", "", " %"),
    HEADING_DEG("heading", "circling", "°"),
    HEIGHT("height"),
    HIGH_US("high end", "not known", " µs"),
    HOLDS("holds", ElementKind.LINE),
    HOTTEST_CELL_C("hottest solar cells", "the default", " °C"),
    I2C_ADDRESSES("bus addresses", "none", ""),
    I2C_BUSES("I²C buses"),
    ID("id"),
    INSULATION_C("insulation up to", "not known", " °C"),
    IN_SERVICE_PERCENT("reserve at stage In service", "", " %"),
    IRREVERSIBLE("cannot be taken back"),
    KIND("kind"),
    LANDING_RESERVE_MINUTES("left for the landing", "the default", " min"),
    LATERAL_LIMIT("CG off the centre line allowed", "the default", ""),
    LATITUDE_DEG("latitude", "not known", "°"),
    LEAD("its own lead", "not known", ""),
    LEAST_GAP_US("shortest gap", "not known", " µs"),
    LEAST_PERCENT("static margin at least", "not said", " %"),
    LEDGER("the ledger then"),
    LENGTH("length"),
    LINE("part", ElementKind.LINE),
    LOAD_CASE("load case", ElementKind.LOAD_CASE),
    LONGEST_PULSE_US("longest pulse", "not known", " µs"),
    LONGITUDE_DEG("longitude", "not known", "°"),
    LOW_US("low end", "not known", " µs"),
    MASS("mass"),
    MASS_UNCERTAINTY("uncertainty of masses"),
    MAX_CHARGE_C("charging current at most", "not known", " C"),
    MAX_ERROR("greatest error"),
    MAX_INPUT_V("highest input", "not known", " V"),
    MAX_POWER_V("voltage at the best point", "not known", " V"),
    MAX_POWER_W("power at the best point", "not known", " W"),
    MAX_RATE_HZ("fastest rate borne", "not known", " Hz"),
    MAX_V("highest voltage", "not known", " V"),
    MAY_HAVE("may have", "anything", ""),
    MILLIOHM("resistance", "not known", " mΩ"),
    MINUTES("lasts", "as long as it takes", " min"),
    MIN_INPUT_V("lowest input", "not known", " V"),
    MIN_V("lowest voltage", "not known", " V"),
    MIRRORED("mirrored"),
    MIRRORED_AT_Y("half on each side at", "not mirrored", ""),
    MIXES("mixes", ElementKind.CONTROL),
    MOMENTS("moments", "not known", ""),
    MOST_PERCENT("static margin at most", "not said", " %"),
    MOVED("sits elsewhere", ElementKind.LINE),
    MOVES_WITH("moves with"),
    MUST_SELECT("must select", "nothing", ""),
    NAME("name"),
    NEEDS("connections needed"),
    NEXT("next phase", ElementKind.PHASE),
    NOMINAL_V("nominal voltage", "not known", " V"),
    NOSE_JOINT_X("nose is lengthened at", "not said", ""),
    NOSE_STRUCTURE_G_PER_MM("structure of a longer nose", "not said", " g/mm"),
    NOSE_UP_DEG("nose up", "not known", "°"),
    NOTE("note", "none", ""),
    NUMBER("number", "none yet", ""),
    ON_LOSS("receiver when the signal is lost", "not known", ""),
    ON_SIGNAL_LOSS("when the signal is lost", "not said", ""),
    OPEN_CIRCUIT_V("open-circuit voltage", "not known", " V"),
    OTHERWISE_BY("commanded by", "the radio", ""),
    OUTPUTS("outputs"),
    OUTPUT_A("plugs of outputs together", "not known", " A"),
    OUTPUT_NUMBERS("outputs"),
    OUTPUT_V("output voltage", "not known", " V"),
    PACK("pack", "none", ""),
    PANELS("panels", "none", ""),
    PARALLEL_CELLS("cells side by side"),
    PART("is the part", ElementKind.LINE),
    PART_CODE("part code", "none", ""),
    PEAK_A("peak current", "not known", " A"),
    PEAK_RATING_A("rating for moments", "no more than the rating", " A"),
    PHASE("phase", ElementKind.PHASE),
    PHASES("phases", "every phase", ElementKind.PHASE),
    PIECES("pieces"),
    PINNED("pinned"),
    PLACE("place"),
    POSITIONS("positions", "moves freely", ""),
    POWER_PERCENT_PER_C("power changes with warmth", "not known", " % per °C"),
    PRESET_STATE("preset", "none", ""),
    PULSE("kind of pulse", "not known", ""),
    PULSES("kinds of pulse", "not known", ""),
    PURPOSE("purpose"),
    QUANTITY("quantity"),
    QUIESCENT_A("draws itself", "not known", " A"),
    RAIL("rail", ElementKind.RAIL),
    RATES_HZ("rates in Hz", "not known", ""),
    RATING_A("rating", "not known", " A"),
    READING("reading"),
    REASON("reason"),
    REDUNDANT("each feed must carry it alone"),
    REGULATOR("regulator", "none", ""),
    REGULATOR_RESERVE_PERCENT("reserve of regulators", "the default", " %"),
    RESERVES("reserves by stage"),
    RESERVE_PERCENT("reserve wanted", "the default of the stage", " %"),
    REST_US("at rest", "not known", " µs"),
    REVERSED("reversed"),
    REVISION("revision"),
    ROOT_CHORD("root chord"),
    ROUTING("lies"),
    ROWS("growth by category"),
    SCALE("scales"),
    SCALE_MAX_ERROR("greatest error of the scales"),
    SCALE_STEP("step of the scales"),
    SECOND("second part", ElementKind.LINE),
    SENSOR_RESERVE_PERCENT("reserve of current sensors", "the default", " %"),
    SERIALS("serial numbers", "none", ""),
    SERIAL_PORTS("serial ports"),
    SERIES_CELLS("cells in line"),
    SERVES("serves", ElementKind.FUNCTION),
    SHARING("they share"),
    SHORT_CIRCUIT_A("short-circuit current", "not known", " A"),
    SIZE("size"),
    SKY_PERCENT("light of a clear sky", "not known", " %"),
    SOURCE("source"),
    SOURCE_RESERVE_PERCENT("reserve of batteries and supplies", "the default", " %"),
    SPAN("span"),
    STAGE("stage"),
    START_HOUR("begins at the hour"),
    START_PERCENT("charge at the beginning", "not known", " %"),
    STATE("state"),
    STATES("states", "none", ""),
    STATIC_MARGIN("static margin wanted", "not said", ""),
    STATION("station"),
    STATION_UNCERTAINTY("uncertainty of the station"),
    STEP("step"),
    STOP_FUNCTION("charging is stopped by", ElementKind.FUNCTION),
    STOWED("stowed", ElementKind.LINE),
    STOWED_STATION("stowed station", "none", ""),
    STRETCH("takes up what the battery has left"),
    SUPPLIER("supplier", "none", ""),
    SUPPLY("supply"),
    SUPPORTS("supports", "none", ""),
    SURFACE("shape"),
    SWITCHED_LOAD("switches", "not said", ""),
    SWITCH_RESERVE_PERCENT("reserve of switches", "the default", " %"),
    TAIL("tail", "none", ""),
    TARE("tare"),
    TARE_TAKEN("a tare is taken"),
    TARGET_MASS("target", "not set", ""),
    TILTED_NOSE_UP_DEG("nose up in the second weighing", "not tilted", "°"),
    TILTED_READING("tilted reading", "none", ""),
    TILT_DEG("leans from level", "not known", "°"),
    TIP_CHORD("tip chord"),
    TIP_OFFSET("tip set back"),
    TO("to", ElementKind.RAIL),
    TO_X("to"),
    TO_Y("to the right side", "not limited", ""),
    TO_Z("to above", "not limited", ""),
    TRACKER_EFFICIENCY_PERCENT("efficiency of the tracker", "not known", " %"),
    TRAIN("train of pulses", "none", ""),
    TRAVEL("may be moved", "not said", ""),
    TYPE("works"),
    TYPICAL_A("typical current", "not known", " A"),
    UNCERTAINTY("uncertainty of one", "by the rule of its basis", ""),
    UNIT_MASS("mass of one"),
    USABLE_PERCENT("of it usable", "not known", " %"),
    UTC_OFFSET_HOURS("clock ahead of universal time", "not known", " h"),
    VOLTAGE_PERCENT_PER_C("voltage changes with warmth", "not known", " % per °C"),
    WANTED_MINUTES("flight wanted", "not said", " min"),
    WANTED_RATE_HZ("rate wanted", "not said", " Hz"),
    WEIGHED_AS("weighed", "not said how", ""),
    WEIGHED_CORRELATION("correlation of weighed masses"),
    WHY("because"),
    WIDTH("width"),
    WING("wing", "none", ""),
    WIRE("wire", "none", ""),
    WIRE_C("wires are as warm as", "the default", " °C"),
    WIRE_RESERVE_PERCENT("reserve of wires", "the default", " %"),
    X("aft"),
    Y("to the right"),
    Z("up");

    private final String word;
    private final String missing;
    private final String unit;
    private final @Nullable ElementKind refersTo;

    FieldWord(String word) {
        this(word, "not known", "");
    }

    /** @param unit behind a bare number, with its space */
    FieldWord(String word, String missing, String unit) {
        this.word = word;
        this.missing = missing;
        this.unit = unit.replace(' ', '\u2009');
        this.refersTo = null;
    }

    /** A field that names elements by their ids or codes. */
    FieldWord(String word, ElementKind refersTo) {
        this(word, "none", refersTo);
    }

    FieldWord(String word, String missing, ElementKind refersTo) {
        this.word = word;
        this.missing = missing;
        this.unit = "";
        this.refersTo = refersTo;
    }

    /** The word for a field, found by its name in the record. */
    public static Optional<FieldWord> of(String field) {
        for (FieldWord word : values()) {
            if (word.field().equals(field)) {
                return Optional.of(word);
            }
        }
        return Optional.empty();
    }

    /** The field's name in the record: {@code targetMass}. */
    public String field() {
        String[] words = name().toLowerCase(Locale.ROOT).split("_", -1);
        StringBuilder field = new StringBuilder(words[0]);
        for (int i = 1; i < words.length; i++) {
            field.append(Character.toUpperCase(words[i].charAt(0))).append(words[i].substring(1));
        }
        return field.toString();
    }

    public String word() {
        return word;
    }

    /** What is said where the field holds nothing. */
    public String missing() {
        return missing;
    }

    String unit() {
        return unit;
    }

    /** The kind of element whose ids or codes the field holds; null where it holds values of its own. */
    @Nullable
    ElementKind refersTo() {
        return refersTo;
    }
}
