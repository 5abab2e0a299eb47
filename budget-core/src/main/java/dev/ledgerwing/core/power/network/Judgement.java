package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * A current held against a rating, the worse of continuous and peak.
 *
 * @param reservePercent share of the rating that must stay free
 * @param isWhole whether everything that flows is known; otherwise the currents are at least what they are
 */
record Judgement(
        double continuousA,
        double peakA,
        @Nullable Double ratingA,
        @Nullable Double peakRatingA,
        double reservePercent,
        boolean isWhole) {

    private static final double ROUNDING_PERCENT = 1e-9;

    /** The worse of the two in per cent of its rating; null = a rating is not known. */
    @Nullable
    Double loadPercent() {
        Double continuous = percent(continuousA, ratingA);
        Double peak = percent(peakA, peakRatingA);
        return continuous == null || peak == null ? null : Double.valueOf(Math.max(continuous, peak));
    }

    boolean isPeakWorse() {
        Double continuous = percent(continuousA, ratingA);
        Double peak = percent(peakA, peakRatingA);
        return peak != null && (continuous == null || peak > continuous);
    }

    private static @Nullable Double percent(double amperes, @Nullable Double ratingA) {
        return ratingA == null ? null : Double.valueOf(100 * amperes / ratingA);
    }

    Verdict verdict() {
        if (isOver(continuousA, ratingA) || isOver(peakA, peakRatingA)) {
            return Verdict.BREAKS;
        }
        Double load = loadPercent();
        if (load == null || !isWhole) {
            return Verdict.UNKNOWN;
        }
        return load > 100 - reservePercent + ROUNDING_PERCENT ? Verdict.TIGHT : Verdict.HOLDS;
    }

    private static boolean isOver(double amperes, @Nullable Double ratingA) {
        Double percent = percent(amperes, ratingA);
        return percent != null && percent > 100 + ROUNDING_PERCENT;
    }
}
