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
    ANALOG_INPUTS("analogue inputs needed"),
    APEX("leading edge of the root"),
    ARM_UNCERTAINTY("uncertainty of the supports' places"),
    ASSEMBLY("assembly", ElementKind.ASSEMBLY),
    AT_LEAST("at least"),
    BALANCE_LIMITS("balance limits", "none declared", ""),
    BASIS("basis"),
    BODY_SHIFT_PERCENT_MAC("shift of the neutral point by the body", "the default", " % MAC"),
    BOOKING("booked"),
    BUILD_PERCENT("reserve at stage Build", "", " %"),
    CALCULATED_CORRELATION("correlation of calculated masses"),
    CALCULATED_PERCENT("uncertainty of a calculated mass", "", " %"),
    CAN_NODES("nodes on the bus needed"),
    CATALOGUE_CORRELATION("correlation of catalogue masses"),
    CATALOGUE_PERCENT("uncertainty of a catalogue mass", "", " %"),
    CATEGORY("category"),
    CEILING_IS("the ceiling means", "nothing", ""),
    CEILING_MASS("ceiling", "none", ""),
    CHARGING_POSSIBLE("charging possible"),
    CODE("code"),
    CONCEPT_PERCENT("reserve at stage Concept", "", " %"),
    COST_EACH("cost each", "not noted", ""),
    CRITICALITY("what hangs on it"),
    DATE("date"),
    DATUM("datum"),
    DESIGN("design case"),
    DESIGN_PERCENT("reserve at stage Design", "", " %"),
    DIHEDRAL_DEG("dihedral", "not known", "°"),
    DRAWS("draws"),
    DUTY_BY_PHASE("runs", ElementKind.PHASE),
    EFFICIENCY("efficiency of the tail"),
    ELECTRICAL("electrical load", "none", ""),
    EXCLUSIVE_GROUP("never draws together with group", "none", ""),
    EXTRA("carried besides", "nothing", ""),
    FINGERPRINT("fingerprint"),
    FIRST("first part", ElementKind.LINE),
    FLIGHT_TEST_PERCENT("reserve at stage Flight test", "", " %"),
    FORWARD_PERCENT_MAC("forward limit", "none", " % MAC"),
    FORWARD_X("forward limit", "none", ""),
    FROM_X("from"),
    FROM_Y("from the left", "not limited", ""),
    FROM_Z("from below", "not limited", ""),
    GROWTH("growth table"),
    GROWTH_PERCENT("growth allowance", "by the growth table", " %"),
    GUESSED_CORRELATION("correlation of guessed masses"),
    GUESSED_PERCENT("uncertainty of a guessed mass", "", " %"),
    HEIGHT("height"),
    HOLDS("holds", ElementKind.LINE),
    I2C_ADDRESSES("bus addresses", "none", ""),
    ID("id"),
    IN_SERVICE_PERCENT("reserve at stage In service", "", " %"),
    IRREVERSIBLE("cannot be taken back"),
    KIND("kind"),
    LATERAL_LIMIT("CG off the centre line allowed", "the default", ""),
    LEAST_PERCENT("static margin at least", "not said", " %"),
    LEDGER("the ledger then"),
    LENGTH("length"),
    LOAD_CASE("load case", ElementKind.LOAD_CASE),
    MASS("mass"),
    MASS_UNCERTAINTY("uncertainty of masses"),
    MAX_ERROR("greatest error"),
    MAX_V("highest voltage", "not known", " V"),
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
    OUTPUTS("outputs needed"),
    PANELS("panels", "none", ""),
    PART_CODE("part code", "none", ""),
    PEAK_A("peak current", "not known", " A"),
    PLACE("place"),
    PURPOSE("purpose"),
    QUANTITY("quantity"),
    RAIL("rail", ElementKind.RAIL),
    READING("reading"),
    REASON("reason"),
    RESERVE_PERCENT("reserve wanted", "the default of the stage", " %"),
    RESERVES("reserves by stage"),
    REVISION("revision"),
    ROOT_CHORD("root chord"),
    ROWS("growth by category"),
    SCALE("scales"),
    SCALE_MAX_ERROR("greatest error of the scales"),
    SCALE_STEP("step of the scales"),
    SECOND("second part", ElementKind.LINE),
    SERIAL_PORTS("serial ports needed"),
    SERIALS("serial numbers", "none", ""),
    SERVES("serves", ElementKind.FUNCTION),
    SIZE("size"),
    SOURCE("source"),
    SPAN("span"),
    STAGE("stage"),
    STATE("state"),
    STATES("states", "none", ""),
    STATIC_MARGIN("static margin wanted", "not said", ""),
    STATION("station"),
    STATION_UNCERTAINTY("uncertainty of the station"),
    STEP("step"),
    STOWED("stowed", ElementKind.LINE),
    STOWED_STATION("stowed station", "none", ""),
    STRETCH("takes up what the battery has left"),
    SUPPLIER("supplier", "none", ""),
    SUPPLY("supply"),
    SUPPORTS("supports", "none", ""),
    SURFACE("shape"),
    TAIL("tail", "none", ""),
    TARE("tare"),
    TARE_TAKEN("a tare is taken"),
    TARGET_MASS("target", "not set", ""),
    TILTED_NOSE_UP_DEG("nose up in the second weighing", "not tilted", "°"),
    TILTED_READING("tilted reading", "none", ""),
    TIP_CHORD("tip chord"),
    TIP_OFFSET("tip set back"),
    TO_X("to"),
    TO_Y("to the right side", "not limited", ""),
    TO_Z("to above", "not limited", ""),
    TRAVEL("may be moved", "not said", ""),
    TYPICAL_A("typical current", "not known", " A"),
    UNCERTAINTY("uncertainty of one", "by the rule of its basis", ""),
    UNIT_MASS("mass of one"),
    WEIGHED_AS("weighed", "not said how", ""),
    WEIGHED_CORRELATION("correlation of weighed masses"),
    WIDTH("width"),
    WING("wing", "none", ""),
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
