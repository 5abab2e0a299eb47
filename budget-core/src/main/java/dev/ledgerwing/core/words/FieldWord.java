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
    ABSENT("stays at home", ElementKind.LINE),
    ANALOG_INPUTS("analogue inputs needed"),
    ASSEMBLY("assembly", ElementKind.ASSEMBLY),
    BASIS("basis"),
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
    DATUM("datum"),
    DESIGN("design case"),
    DESIGN_PERCENT("reserve at stage Design", "", " %"),
    DRAWS("draws"),
    DUTY_BY_PHASE("runs", ElementKind.PHASE),
    ELECTRICAL("electrical load", "none", ""),
    EXCLUSIVE_GROUP("never draws together with group", "none", ""),
    EXTRA("carried besides", "nothing", ""),
    FLIGHT_TEST_PERCENT("reserve at stage Flight test", "", " %"),
    FROM_X("from"),
    GROWTH("growth table"),
    GROWTH_PERCENT("growth allowance", "by the growth table", " %"),
    GUESSED_CORRELATION("correlation of guessed masses"),
    GUESSED_PERCENT("uncertainty of a guessed mass", "", " %"),
    HEIGHT("height"),
    I2C_ADDRESSES("bus addresses", "none", ""),
    ID("id"),
    IN_SERVICE_PERCENT("reserve at stage In service", "", " %"),
    IRREVERSIBLE("cannot be taken back"),
    KIND("kind"),
    LENGTH("length"),
    LOAD_CASE("load case", ElementKind.LOAD_CASE),
    MASS("mass"),
    MASS_UNCERTAINTY("uncertainty of masses"),
    MAX_V("highest voltage", "not known", " V"),
    MINUTES("lasts", "as long as it takes", " min"),
    MIN_V("lowest voltage", "not known", " V"),
    MIRRORED_AT_Y("half on each side at", "not mirrored", ""),
    MOVED("sits elsewhere", ElementKind.LINE),
    MOVES_WITH("moves with"),
    NAME("name"),
    NEEDS("connections needed"),
    NEXT("next phase", ElementKind.PHASE),
    NOMINAL_V("nominal voltage", "not known", " V"),
    NOTE("note", "none", ""),
    OUTPUTS("outputs needed"),
    PART_CODE("part code", "none", ""),
    PEAK_A("peak current", "not known", " A"),
    PLACE("place"),
    PURPOSE("purpose"),
    QUANTITY("quantity"),
    RAIL("rail", ElementKind.RAIL),
    REASON("reason"),
    RESERVES("reserves by stage"),
    RESERVE_PERCENT("reserve wanted", "the default of the stage", " %"),
    ROWS("growth by category"),
    SCALE_MAX_ERROR("greatest error of the scales"),
    SCALE_STEP("step of the scales"),
    SERIALS("serial numbers", "none", ""),
    SERIAL_PORTS("serial ports needed"),
    SERVES("serves", ElementKind.FUNCTION),
    SIZE("size"),
    SOURCE("source"),
    STAGE("stage"),
    STATE("state"),
    STATES("states", "none", ""),
    STATION("station"),
    STATION_UNCERTAINTY("uncertainty of the station"),
    STOWED("stowed", ElementKind.LINE),
    STOWED_STATION("stowed station", "none", ""),
    STRETCH("takes up what the battery has left"),
    SUPPLIER("supplier", "none", ""),
    SUPPLY("supply"),
    TARE_TAKEN("a tare is taken"),
    TARGET_MASS("target", "not set", ""),
    TO_X("to"),
    TRAVEL("may be moved", "not said", ""),
    TYPICAL_A("typical current", "not known", " A"),
    UNCERTAINTY("uncertainty of one", "by the rule of its basis", ""),
    UNIT_MASS("mass of one"),
    WEIGHED_AS("weighed", "not said how", ""),
    WEIGHED_CORRELATION("correlation of weighed masses"),
    WIDTH("width"),
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
