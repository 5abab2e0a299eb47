package dev.ledgerwing.web.power;

import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.quantity.Figures;
import org.jspecify.annotations.Nullable;

/** Writes electrical figures for people; what is not known says so. */
final class Electric {

    static final String NOT_KNOWN = "not known";

    private static final char THIN_SPACE = '\u2009';
    private static final double MINUTES_TO = 180;

    private Electric() {}

    static String amperes(@Nullable Double amperes) {
        return amperes == null ? NOT_KNOWN : PowerWords.amperes(amperes);
    }

    static String volts(@Nullable Double volts) {
        return volts == null ? NOT_KNOWN : PowerWords.volts(volts);
    }

    static String watts(@Nullable Double watts) {
        return watts == null ? NOT_KNOWN : PowerWords.watts(watts);
    }

    static String wattHours(@Nullable Double wattHours) {
        return with("Wh", wattHours, wattHours != null && Math.abs(wattHours) >= 10 ? 1 : 2);
    }

    /** {@code 12.5 min}, in hours from three of them on. */
    static String minutes(@Nullable Double minutes) {
        return minutes != null && minutes >= MINUTES_TO ? with("h", minutes / 60, 1) : with("min", minutes, 1);
    }

    /** {@code 35.5 %}, or {@code 41.6 % over} where the rating is exceeded. */
    static String free(@Nullable Double marginPercent) {
        return marginPercent != null && marginPercent < 0
                ? Figures.percent(-marginPercent) + " over"
                : percent(marginPercent);
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
        if (toV != null && volts(fromV).equals(volts(toV))) {
            return volts(toV);
        }
        return toV == null ? "from " + volts(fromV) : Figures.number(fromV, 2) + " to " + volts(toV);
    }

    static String with(String unit, @Nullable Double value, int decimals) {
        return value == null ? NOT_KNOWN : Figures.number(value, decimals) + THIN_SPACE + unit;
    }

    /** Before a figure of which a part is not known. */
    static String atLeast(boolean isWhole, String figure) {
        return isWhole || figure.equals(NOT_KNOWN) ? figure : "at least " + figure;
    }
}
