package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.quantity.LengthUnit;
import dev.ledgerwing.core.quantity.MassUnit;
import java.util.Optional;

/** What a column of a parts table holds. */
public enum Meaning {
    NAME("name of the part"),
    QUANTITY("number of pieces"),
    UNIT_MASS("mass of one piece"),
    LINE_MASS("mass of all its pieces together"),
    ASSEMBLY("assembly"),
    CATEGORY("category"),
    BASIS("where the mass comes from"),
    STATION_X("station x, aft of the datum"),
    STATION_Y("station y, to the right"),
    STATION_Z("station z, up"),
    STATE("how far the part has come"),
    PART_CODE("part code"),
    SUPPLIER("supplier"),
    COST_EACH("cost of one piece"),
    NOTE("note"),
    IGNORED("not read");

    private final String title;

    Meaning(String title) {
        this.title = title;
    }

    /** What people read in place of the name. */
    public String title() {
        return title;
    }

    public boolean isMass() {
        return this == UNIT_MASS || this == LINE_MASS;
    }

    public boolean isStation() {
        return this == STATION_X || this == STATION_Y || this == STATION_Z;
    }

    /** Whether numbers of such a column count in a unit. */
    public boolean hasUnit() {
        return isMass() || isStation();
    }

    /** The symbol of the unit spelt {@code text}; nothing where it is no unit of such a column. */
    public Optional<String> unit(String text) {
        if (isMass()) {
            return MassUnit.spelt(text).map(MassUnit::symbol);
        }
        return isStation() ? LengthUnit.spelt(text).map(LengthUnit::symbol) : Optional.empty();
    }

    boolean isNumeric() {
        return hasUnit() || this == COST_EACH;
    }
}
