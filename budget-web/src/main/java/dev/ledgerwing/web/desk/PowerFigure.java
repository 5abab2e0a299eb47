package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.quantity.Figures;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How much of its rating the most loaded thing of a supply has free, and how long the airframe can fly; null = not known.
 *
 * @param marginPercent less than 0 where the rating is exceeded
 */
public record PowerFigure(
        @Nullable Double marginPercent, @Nullable Double enduranceMinutes) {

    /** From the figures of a review. */
    public static PowerFigure of(Map<String, Double> figures) {
        return new PowerFigure(figures.get("power.worstMarginPercent"), figures.get("power.enduranceMinutes"));
    }

    /** {@code 18 % free, 47 min}; what is not known is left out. */
    public String words() {
        String margin = margin();
        String endurance = endurance();
        if (margin.isEmpty()) {
            return endurance.isEmpty() ? "no load against a rating yet" : endurance;
        }
        return endurance.isEmpty() ? margin : margin + ", " + endurance;
    }

    /** {@code 18.4 % free} or {@code 6.1 % over}, never rounded to the better; empty where it is not known. */
    public String margin() {
        if (marginPercent == null) {
            return "";
        }
        return marginPercent < 0
                ? Figures.percent(Math.ceil(-10 * marginPercent) / 10) + " over"
                : Figures.percent(Math.floor(10 * marginPercent) / 10) + " free";
    }

    /** {@code 43.3 min}; empty where it is not known. */
    public String endurance() {
        return enduranceMinutes == null ? "" : Figures.number(enduranceMinutes, 1) + "\u2009min";
    }
}
