package dev.ledgerwing.web.power;

import dev.ledgerwing.core.quantity.Figures;
import org.jspecify.annotations.Nullable;

/** Writes electrical figures for people; what is not known says so. */
final class Electric {

    static final String NOT_KNOWN = "not known";

    private static final char THIN_SPACE = '\u2009';

    private Electric() {}

    /** {@code 0.12 A}. */
    static String amperes(@Nullable Double amperes) {
        return with("A", amperes, amperes != null && Math.abs(amperes) >= 10 ? 1 : 3);
    }

    /** {@code 5.02 V}. */
    static String volts(@Nullable Double volts) {
        return with("V", volts, 2);
    }

    static String wattHours(@Nullable Double wattHours) {
        return with("Wh", wattHours, wattHours != null && Math.abs(wattHours) >= 10 ? 1 : 2);
    }

    static String minutes(@Nullable Double minutes) {
        return with("min", minutes, minutes != null && Math.abs(minutes) >= 10 ? 0 : 1);
    }

    static String percent(@Nullable Double percent) {
        return percent == null ? NOT_KNOWN : Figures.percent(percent);
    }

    /** {@code 4.8 to 5.5 V}, {@code from 4.8 V}, {@code up to 5.5 V}. */
    static String range(@Nullable Double fromV, @Nullable Double toV) {
        if (fromV == null && toV == null) {
            return NOT_KNOWN;
        }
        if (fromV == null) {
            return "up to " + volts(toV);
        }
        return toV == null ? "from " + volts(fromV) : Figures.number(fromV, 2) + " to " + volts(toV);
    }

    static String with(String unit, @Nullable Double value, int decimals) {
        return value == null ? NOT_KNOWN : Figures.number(value, decimals) + THIN_SPACE + unit;
    }
}
