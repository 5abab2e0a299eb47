package dev.ledgerwing.web.desk;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How many outputs the parts take and how many the fitted board has; null = not known. */
public record OutputsFigure(
        @Nullable Integer needed, @Nullable Integer available) {

    /** From the figures of a review. */
    public static OutputsFigure of(Map<String, Double> figures) {
        return new OutputsFigure(
                RadioFigure.whole(figures.get("outputs.needed")), RadioFigure.whole(figures.get("outputs.available")));
    }

    /** {@code 9 of 12 outputs}, or {@code 9 outputs needed, 8 there}; what is not known is left out. */
    public String words() {
        if (available == null) {
            return needed == null ? "no board yet" : outputs(needed) + " needed, no board yet";
        }
        if (needed == null) {
            return outputs(available);
        }
        return needed > available
                ? outputs(needed) + " needed, " + available + " there"
                : needed + " of " + outputs(available);
    }

    private static String outputs(int count) {
        return count == 1 ? "1 output" : count + " outputs";
    }
}
