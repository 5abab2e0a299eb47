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
    AFT_PERCENT_MAC("aft limit", "none", " % MAC"),
    AFT_X("aft limit", "none", ""),
    AIR_C("temperature of the air", "not known", " °C"),
    ANALOG_INPUTS("analogue inputs needed"),
    APEX("leading edge of the root"),
    ARM_UNCERTAINTY("uncertainty of the supports' places"),
    ARRAY("solar cells", "none", ""),
    ASSEMBLY("assembly", ElementKind.ASSEMBLY),
    AT_LEAST("at least"),
    AUTOMATIC_CUT_OFF("stops charging by itself when full"),
    AWG("wire gauge", "not known", " AWG"),
    BALANCE_LIMITS("balance limits", "none declared", ""),
    BASIS("basis"),
    BODY_SHIFT_PERCENT_MAC("shift of the neutral point by the body", "the default", " % MAC"),
    BOOKING("booked"),
    BUILD_PERCENT("reserve at stage Build", "", " %"),
    BURST_C("current for moments", "not known", " C"),
    CALCULATED_CORRELATION("correlation of calculated masses"),
    CALCULATED_PERCENT("uncertainty of a calculated mass", "", " %"),
    CAN_NODES("nodes on the bus needed"),
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
    CHARGING_POSSIBLE("charging possible"),
    CHEMISTRY("cells"),
    CODE("code"),
    COLDEST_CELL_C("coldest solar cells", "the default", " °C"),
    CONCEPT_PERCENT("reserve at stage Concept", "", " %"),
    CONDUCTORS("wires in the run"),
    CONNECTION("connected"),
    CONNECTOR_RESERVE_PERCENT("reserve of connectors", "the default", " %"),
    CONTINUOUS_C("continuous current", "not known", " C"),
    CONTROLLER_RESERVE_PERCENT("reserve of motor controllers", "the default", " %"),
    COST_EACH("cost each", "not noted", ""),
    COUNT("side by side"),
    CRITICALITY("what hangs on it"),
    DATE("date"),
    DATUM("datum"),
    DESIGN("design case"),
    DESIGN_PERCENT("reserve at stage Design", "", " %"),
    DIHEDRAL_DEG("dihedral", "not known", "°"),
    DIODE_RESERVE_PERCENT("reserve of diodes", "the default", " %"),
    DRAWS("draws"),
    DROP_LIMIT_PERCENT("voltage lost at most", "the default", " %"),
    DROPOUT_V("input above output by", "not known", " V"),
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
    FROM("from"),
    FROM_X("from"),
    FROM_Y("from the left", "not limited", ""),
    FROM_Z("from below", "not limited", ""),
    FUSE_RESERVE_PERCENT("reserve of fuses and breakers", "the default", " %"),
    GROWTH("growth table"),
    GROWTH_PERCENT("growth allowance", "by the growth table", " %"),
    GUESSED_CORRELATION("correlation of guessed masses"),
    GUESSED_PERCENT("uncertainty of a guessed mass", "", " %"),
    HEADING_DEG("heading", "circling", "°"),
    HEIGHT("height"),
    HOLDS("holds", ElementKind.LINE),
    HOTTEST_CELL_C("hottest solar cells", "the default", " °C"),
    I2C_ADDRESSES("bus addresses", "none", ""),
    ID("id"),
    IN_SERVICE_PERCENT("reserve at stage In service", "", " %"),
    INSULATION_C("insulation up to", "not known", " °C"),
    IRREVERSIBLE("cannot be taken back"),
    KIND("kind"),
    LANDING_RESERVE_MINUTES("left for the landing", "the default", " min"),
    LATERAL_LIMIT("CG off the centre line allowed", "the default", ""),
    LATITUDE_DEG("latitude", "not known", "°"),
    LEAD("its own lead", "not known", ""),
    LEAST_PERCENT("static margin at least", "not said", " %"),
    LEDGER("the ledger then"),
    LENGTH("length"),
    LOAD_CASE("load case", ElementKind.LOAD_CASE),
    LONGITUDE_DEG("longitude", "not known", "°"),
    MASS("mass"),
    MASS_UNCERTAINTY("uncertainty of masses"),
    MAX_CHARGE_C("charging current at most", "not known", " C"),
    MAX_ERROR("greatest error"),
    MAX_INPUT_V("highest input", "not known", " V"),
    MAX_POWER_V("voltage at the best point", "not known", " V"),
    MAX_POWER_W("power at the best point", "not known", " W"),
    MAX_V("highest voltage", "not known", " V"),
    MILLIOHM("resistance", "not known", " mΩ"),
    MIN_INPUT_V("lowest input", "not known", " V"),
    MIN_V("lowest voltage", "not known", " V"),
    MINUTES("lasts", "as long as it takes", " min"),
    MIRRORED("mirrored"),
    MIRRORED_AT_Y("half on each side at", "not mirrored", ""),
    MOMENTS("moments", "not known", ""),
    MOST_PERCENT("static margin at most", "not said", " %"),
    MOVED("sits elsewhere", ElementKind.LINE),
    MOVES_WITH("moves with"),
    NAME("name"),
    NEEDS("connections needed"),
    NEXT("next phase", ElementKind.PHASE),
    NOMINAL_V("nominal voltage", "not known", " V"),
    NOSE_JOINT_X("nose is lengthened at", "not said", ""),
    NOSE_STRUCTURE_G_PER_MM("structure of a longer nose", "not said", " g/mm"),
    NOSE_UP_DEG("nose up", "not known", "°"),
    NOTE("note", "none", ""),
    OPEN_CIRCUIT_V("open-circuit voltage", "not known", " V"),
    OUTPUT_V("output voltage", "not known", " V"),
    OUTPUTS("outputs needed"),
    PACK("pack", "none", ""),
    PANELS("panels", "none", ""),
    PARALLEL_CELLS("cells side by side"),
    PART("is the part", ElementKind.LINE),
    PART_CODE("part code", "none", ""),
    PEAK_A("peak current", "not known", " A"),
    PEAK_RATING_A("rating for moments", "no more than the rating", " A"),
    PHASE("phase", ElementKind.PHASE),
    PLACE("place"),
    POWER_PERCENT_PER_C("power changes with warmth", "not known", " % per °C"),
    PURPOSE("purpose"),
    QUANTITY("quantity"),
    QUIESCENT_A("draws itself", "not known", " A"),
    RAIL("rail", ElementKind.RAIL),
    RATING_A("rating", "not known", " A"),
    READING("reading"),
    REASON("reason"),
    REDUNDANT("each feed must carry it alone"),
    REGULATOR("regulator", "none", ""),
    REGULATOR_RESERVE_PERCENT("reserve of regulators", "the default", " %"),
    RESERVE_PERCENT("reserve wanted", "the default of the stage", " %"),
    RESERVES("reserves by stage"),
    REVISION("revision"),
    ROOT_CHORD("root chord"),
    ROUTING("lies"),
    ROWS("growth by category"),
    SCALE("scales"),
    SCALE_MAX_ERROR("greatest error of the scales"),
    SCALE_STEP("step of the scales"),
    SECOND("second part", ElementKind.LINE),
    SENSOR_RESERVE_PERCENT("reserve of current sensors", "the default", " %"),
    SERIAL_PORTS("serial ports needed"),
    SERIALS("serial numbers", "none", ""),
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
    SWITCH_RESERVE_PERCENT("reserve of switches", "the default", " %"),
    SWITCHED_LOAD("switches", "not said", ""),
    TAIL("tail", "none", ""),
    TARE("tare"),
    TARE_TAKEN("a tare is taken"),
    TARGET_MASS("target", "not set", ""),
    TILT_DEG("leans from level", "not known", "°"),
    TILTED_NOSE_UP_DEG("nose up in the second weighing", "not tilted", "°"),
    TILTED_READING("tilted reading", "none", ""),
    TIP_CHORD("tip chord"),
    TIP_OFFSET("tip set back"),
    TO("to", ElementKind.RAIL),
    TO_X("to"),
    TO_Y("to the right side", "not limited", ""),
    TO_Z("to above", "not limited", ""),
    TRACKER_EFFICIENCY_PERCENT("efficiency of the tracker", "not known", " %"),
    TRAVEL("may be moved", "not said", ""),
    TYPE("works"),
    TYPICAL_A("typical current", "not known", " A"),
    UNCERTAINTY("uncertainty of one", "by the rule of its basis", ""),
    UNIT_MASS("mass of one"),
    USABLE_PERCENT("of it usable", "not known", " %"),
    UTC_OFFSET_HOURS("clock ahead of universal time", "not known", " h"),
    VOLTAGE_PERCENT_PER_C("voltage changes with warmth", "not known", " % per °C"),
    WANTED_MINUTES("flight wanted", "not said", " min"),
    WEIGHED_AS("weighed", "not said how", ""),
    WEIGHED_CORRELATION("correlation of weighed masses"),
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
        this.word = word;
        this.missing = "none";
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
