package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.SwitchedLoad;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.power.wire.Ampacity;
import org.jspecify.annotations.Nullable;

/**
 * What one element may carry, after everything that lowers it.
 *
 * @param continuousA for as long as it lasts, and {@code peakA} for moments, in amperes; null = not known
 * @param isSteady whether it says nothing of moments because they do not count: a wire takes its time to warm up
 * @param words where it is from, or why it is not known
 */
public record ElementRating(
        @Nullable Double continuousA, @Nullable Double peakA, boolean isSteady, String words) {

    private static ElementRating of(@Nullable Double continuousA, @Nullable Double peakA, String words) {
        return new ElementRating(continuousA, peakA, false, words);
    }

    /** @param systemV the highest voltage that reaches it, which tells what a switch is worth */
    static ElementRating of(FeedElement element, double systemV) {
        WireRun wire = element.wire();
        if (wire != null) {
            return ofWire(wire, element);
        }
        Double own = element.ratingA();
        if (own != null) {
            Double peak = element.peakRatingA() == null ? own : element.peakRatingA();
            return element.kind() == FeedElement.Kind.SWITCH
                    ? ofSwitch(own, peak, element.switchedLoad(), systemV)
                    : of(own, peak, "its rating");
        }
        return of(null, null, "no rating is recorded");
    }

    private static ElementRating ofWire(WireRun wire, FeedElement element) {
        Ampacity ampacity = Ampacity.of(wire);
        Double own = element.ratingA();
        Double peakA = element.peakRatingA();
        return new ElementRating(
                own == null ? ampacity.continuousA() : own,
                peakA,
                peakA == null,
                own == null ? ampacity.source() : "its rating");
    }

    /** The factor belongs to the current that flows all the time: it makes room for the moment of switching. */
    private static ElementRating ofSwitch(
            double ownA, @Nullable Double peakA, @Nullable SwitchedLoad switched, double systemV) {
        if (switched == null) {
            return of(null, peakA, "it is not recorded what it switches");
        }
        double factor = SwitchDerating.factor(switched, systemV);
        if (factor == 1) {
            return of(ownA, peakA, "its rating");
        }
        String words = PowerWords.amperes(ownA) + " less a factor of " + (int) factor + " for " + word(switched)
                + " (AC 43.13-1B table 11-4)";
        return of(ownA / factor, peakA, words);
    }

    private static String word(SwitchedLoad switched) {
        return switch (switched) {
            case RESISTIVE -> "resistive loads";
            case LAMP -> "lamps";
            case INDUCTIVE -> "inductive loads";
            case MOTOR -> "motors";
        };
    }
}
