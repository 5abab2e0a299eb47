package dev.ledgerwing.core.power.solar;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the packs come through 24 hours. Hours count from midnight of the day's date: 26 is two in the morning after.
 *
 * @param percent how full the packs are at each moment, in their order; once empty they stay empty, for then the flight is over
 * @param keepPercent what must stay in the packs
 * @param belowHour when less than that is left for the first time, and {@code emptyHour} when nothing is; null = never
 */
public record DayCharge(
        List<Double> percent,
        double lowestPercent,
        double lowestHour,
        double endPercent,
        double keepPercent,
        @Nullable Double belowHour,
        @Nullable Double emptyHour) {

    public DayCharge {
        percent = List.copyOf(percent);
    }

    /** Whether the packs never hold less than they must keep. */
    public boolean isFlownThrough() {
        return belowHour == null;
    }
}
