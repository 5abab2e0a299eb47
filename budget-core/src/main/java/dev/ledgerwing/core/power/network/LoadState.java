package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * A load and the voltages it gets, behind its own leads, out and back.
 *
 * @param lowestV lowest with the feeds that carry in the ordinary way; null = it never runs, or its rail is not solved
 * @param lowestAloneV lowest with any one feed of each rail carrying it alone; null as {@code lowestV}
 * @param highestV highest, all packs full and nothing drawn; null as {@code lowestV}
 * @param amperes most that all its pieces draw
 * @param isWhole whether everything that lowers its voltage is known
 */
public record LoadState(
        RailLoad load,
        @Nullable Double lowestV,
        @Nullable Double lowestAloneV,
        @Nullable Double highestV,
        double amperes,
        boolean isWhole) {

    private static final double ROUNDING_V = 1e-9;

    public boolean isTooLow() {
        return isBelow(lowestV);
    }

    /** Whether it is too low only when one feed carries alone. */
    public boolean isTooLowAlone() {
        return !isTooLow() && isBelow(lowestAloneV);
    }

    public boolean isTooHigh() {
        Double maxV = load.maxV();
        return maxV != null && highestV != null && highestV > maxV + ROUNDING_V;
    }

    private boolean isBelow(@Nullable Double volts) {
        Double minV = load.minV();
        return minV != null && volts != null && volts < minV - ROUNDING_V;
    }

    /** Whether neither the load nor its rail says what voltage it works at. */
    public boolean lacksLimits() {
        return load.minV() == null || load.maxV() == null;
    }

    /** A voltage that is too low with one feed alone breaks a redundant rail, and is tight on any other. */
    public Verdict verdict() {
        if (isTooLow() || isTooHigh()) {
            return Verdict.BREAKS;
        }
        if (isTooLowAlone()) {
            boolean mustHold = load.rail() != null && load.rail().redundant();
            return mustHold ? Verdict.BREAKS : Verdict.TIGHT;
        }
        boolean isKnown = isWhole && lowestV != null && highestV != null && !lacksLimits();
        return isKnown ? Verdict.HOLDS : Verdict.UNKNOWN;
    }
}
