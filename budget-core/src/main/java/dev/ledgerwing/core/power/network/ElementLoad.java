package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * An element and the worst that it has to bear: over all phases, charges and choices of feeds, each feed carrying its rail alone.
 *
 * @param continuousA continuous current that one of those side by side must be able to carry, and {@code peakA} peak current
 * @param isWhole whether all that flows through it is known; otherwise both are "at least"
 * @param isCarrying whether it ever carries anything; otherwise nothing is known of it
 * @param dropV greatest voltage lost in it at continuous load, and {@code heatW} heat of all of them together then
 * @param lowestInV lowest and {@code highestInV} highest voltage before it; 0 where none arrives
 * @param leastInputV what a regulator must have before it; 0 of everything else
 * @param when where the worst was seen, in words; empty where it carries nothing
 */
public record ElementLoad(
        Feed feed,
        ElementAt at,
        double continuousA,
        double peakA,
        ElementRating rating,
        double reservePercent,
        boolean isWhole,
        boolean isCarrying,
        double dropV,
        double heatW,
        double lowestInV,
        double highestInV,
        double leastInputV,
        String when) {

    public FeedElement element() {
        return feed.elements().get(at.index());
    }

    /** As people read it: {@code “Main fuse”}. */
    public String name() {
        return element().name();
    }

    private Judgement judgement() {
        double momentsA = rating.isSteady() ? continuousA : peakA;
        Double momentsRatingA = rating.isSteady() ? rating.continuousA() : rating.peakA();
        return new Judgement(
                continuousA, momentsA, rating.continuousA(), momentsRatingA, reservePercent, isWhole && isCarrying);
    }

    /** In per cent of its rating, the worse of continuous and peak; null = its rating is not known, or what it carries. */
    public @Nullable Double loadPercent() {
        return isCarrying ? judgement().loadPercent() : null;
    }

    /** 100 less {@link #loadPercent}. */
    public @Nullable Double marginPercent() {
        Double load = loadPercent();
        return load == null ? null : Double.valueOf(100 - load);
    }

    /** Whether {@link #loadPercent} is of the peak. */
    public boolean isPeakWorse() {
        return judgement().isPeakWorse();
    }

    public Verdict verdict() {
        return judgement().verdict();
    }

    /** Whether a regulator gets less than it needs to hold its output, or to work at all. */
    public boolean isInputTooLow() {
        return isRegulator() && isCarrying && lowestInV < leastInputV - 1e-9;
    }

    public boolean isInputTooHigh() {
        Regulator regulator = element().regulator();
        Double maxInputV = regulator == null ? null : regulator.maxInputV();
        return maxInputV != null && highestInV > maxInputV + 1e-9;
    }

    private boolean isRegulator() {
        return element().regulator() != null;
    }
}
