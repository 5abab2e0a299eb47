package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Rail;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A rail over all phases and charges.
 *
 * @param feeds into it, in the order of the record
 * @param volts at each charge, with the feeds that carry in the ordinary way; empty where it is not solved
 * @param legs what each feed gives it alone; empty where it is not solved
 * @param loads that hang on it
 * @param typicalA greatest continuous and {@code peakA} greatest peak current into it
 * @param isFed whether any voltage ever arrives
 * @param isSolved whether it could be solved: not in a loop, nor behind one
 * @param isWhole whether all that flows through it is known; otherwise both currents are "at least"
 * @param heaviest element of its feeds that is nearest to its rating, or furthest beyond it; null = none is known
 * @param wireDropV voltage lost in wires since the last regulator or the source, at continuous load, in the worst case
 */
public record RailState(
        Rail rail,
        List<Feed> feeds,
        List<RailVolts> volts,
        List<Leg> legs,
        List<LoadState> loads,
        double typicalA,
        double peakA,
        boolean isFed,
        boolean isSolved,
        boolean isWhole,
        @Nullable ElementLoad heaviest,
        double wireDropV) {

    /** Less than is written of a voltage is not worth a word. */
    private static final double UNWRITTEN_V = 0.005;

    /**
     * Lowest voltages of a rail at one charge, over all phases.
     *
     * @param continuousV at continuous and {@code peakV} at peak load; 0 = dark
     */
    public record RailVolts(Charge charge, double continuousV, double peakV) {}

    /**
     * What one feed gives a rail alone.
     *
     * @param lowestV lowest under load, and {@code highestV} highest with full packs and nothing drawn; 0 = dark
     */
    public record Leg(Feed feed, double lowestV, double highestV) {}

    public RailState {
        feeds = List.copyOf(feeds);
        volts = List.copyOf(volts);
        legs = List.copyOf(legs);
        loads = List.copyOf(loads);
    }

    /** Lowest under load in the ordinary way; null = not solved. */
    public @Nullable Double lowestV() {
        return volts.stream()
                .map(each -> Math.min(each.continuousV(), each.peakV()))
                .min(Double::compare)
                .orElse(null);
    }

    /** Highest of all its feeds, packs full and nothing drawn; null = not solved. */
    public @Nullable Double highestV() {
        return legs.stream().map(Leg::highestV).max(Double::compare).orElse(null);
    }

    /** Whether it leaves the range that the rail itself is said to have, whatever its loads bear; not where it is dark. */
    public boolean isOutsideOwnLimits() {
        Double lowest = lowestV();
        Double highest = highestV();
        Double minV = rail.minV();
        Double maxV = rail.maxV();
        boolean isLow = minV != null && lowest != null && lowest > 0 && lowest < minV - UNWRITTEN_V;
        return isLow || (maxV != null && highest != null && highest > maxV + UNWRITTEN_V);
    }

    /** Of the heaviest element of its feeds; null = not known. */
    public @Nullable Double loadPercent() {
        return heaviest == null ? null : heaviest.loadPercent();
    }

    public @Nullable Double marginPercent() {
        return heaviest == null ? null : heaviest.marginPercent();
    }

    /** Of the nominal voltage; null = there is none. */
    public @Nullable Double wireDropPercent() {
        Double nominal = rail.nominalV();
        return nominal == null || nominal == 0 ? null : Double.valueOf(100 * wireDropV / nominal);
    }
}
