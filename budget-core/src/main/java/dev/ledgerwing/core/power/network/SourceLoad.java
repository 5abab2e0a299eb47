package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * A source and the worst that is asked of it, over all phases, charges and choices of feeds.
 *
 * @param continuousA continuous and {@code peakA} peak current it gives
 * @param ratingA what it may give for as long as it lasts, and {@code peakRatingA} for moments; null = not known
 * @param isWhole whether all that it is asked for is known; otherwise both currents are "at least"
 * @param isUsed whether anything hangs on it
 * @param lowestV lowest and {@code highestV} highest voltage at its terminals; 0 where it never gives anything
 * @param when where the worst was seen, in words
 */
public record SourceLoad(
        PowerSource source,
        double continuousA,
        double peakA,
        @Nullable Double ratingA,
        @Nullable Double peakRatingA,
        double reservePercent,
        boolean isWhole,
        boolean isUsed,
        double lowestV,
        double highestV,
        String when) {

    private Judgement judgement() {
        return new Judgement(continuousA, peakA, ratingA, peakRatingA, reservePercent, isWhole);
    }

    /** In per cent of what it may give, the worse of continuous and peak; null = not known. */
    public @Nullable Double loadPercent() {
        return judgement().loadPercent();
    }

    /** 100 less {@link #loadPercent}. */
    public @Nullable Double marginPercent() {
        Double load = loadPercent();
        return load == null ? null : Double.valueOf(100 - load);
    }

    public boolean isPeakWorse() {
        return judgement().isPeakWorse();
    }

    public Verdict verdict() {
        return judgement().verdict();
    }
}
