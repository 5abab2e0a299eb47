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
 * @param words where it is from, or why it is not known
 */
public record ElementRating(
        @Nullable Double continuousA, @Nullable Double peakA, String words) {

    /** @param systemV the highest voltage that reaches it, which tells what a switch is worth */
    static ElementRating of(FeedElement element, double systemV) {
        Double own = element.ratingA();
        if (own != null) {
            Double peak = element.peakRatingA() == null ? own : element.peakRatingA();
            return element.kind() == FeedElement.Kind.SWITCH
                    ? ofSwitch(own, peak, element.switchedLoad(), systemV)
                    : new ElementRating(own, peak, "its rating");
        }
        WireRun wire = element.wire();
        return wire == null ? new ElementRating(null, null, "no rating is recorded") : ofWire(wire, element);
    }

    private static ElementRating ofWire(WireRun wire, FeedElement element) {
        Ampacity ampacity = Ampacity.of(wire);
        Double continuousA = ampacity.continuousA();
        Double peakA = element.peakRatingA() == null ? continuousA : element.peakRatingA();
        return new ElementRating(continuousA, continuousA == null ? null : peakA, ampacity.source());
    }

    /** The factor belongs to the current that flows all the time: it makes room for the moment of switching. */
    private static ElementRating ofSwitch(
            double ownA, @Nullable Double peakA, @Nullable SwitchedLoad switched, double systemV) {
        if (switched == null) {
            return new ElementRating(null, peakA, "it is not recorded what it switches");
        }
        double factor = SwitchDerating.factor(switched, systemV);
        String words = PowerWords.amperes(ownA) + " less a factor of " + (int) factor + " for " + word(switched)
                + " (AC 43.13-1B table 11-4)";
        return new ElementRating(ownA / factor, peakA, words);
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
