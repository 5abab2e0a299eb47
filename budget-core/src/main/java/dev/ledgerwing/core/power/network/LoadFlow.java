package dev.ledgerwing.core.power.network;

import org.jspecify.annotations.Nullable;

/**
 * How a load stands in a solution.
 *
 * @param runs whether it runs on the occasion at all
 * @param amperes of all its pieces
 * @param atLoadV behind its own leads, out and back; 0 when no voltage arrives
 * @param isStarved whether a regulator on its way gets less than it needs to work at all
 */
public record LoadFlow(RailLoad load, boolean runs, double amperes, double atLoadV, boolean isStarved) {

    private static final double ROUNDING_V = 1e-9;

    /** Runs, and has no voltage, or not enough, or none to be relied on. */
    public boolean isDark() {
        return runs && (atLoadV <= 0 || isStarved || isTooLow());
    }

    public boolean isTooLow() {
        @Nullable Double minV = load.minV();
        return minV != null && atLoadV < minV - ROUNDING_V;
    }

    public boolean isTooHigh() {
        @Nullable Double maxV = load.maxV();
        return maxV != null && atLoadV > maxV + ROUNDING_V;
    }
}
