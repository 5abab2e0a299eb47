package dev.ledgerwing.report.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the curves of a day in the sun show. Hours count from midnight by the clock on the field; null = not known.
 *
 * @param told the day and the place, in words
 * @param suns when the sun comes up or goes down within the hours drawn
 * @param keepPercent what must stay in the packs
 * @param notes what comes of it and what is not known, a sentence each
 */
public record DayView(
        String airframe,
        String told,
        List<Moment> moments,
        List<SunEvent> suns,
        @Nullable Double keepPercent,
        List<String> notes) {

    /** One moment of it. */
    public record Moment(
            double hour,
            @Nullable Double harvestW,
            @Nullable Double consumptionW,
            @Nullable Double chargePercent) {}

    /** Sunrise or sunset: {@code sunset 21:43}. */
    public record SunEvent(double hour, String words) {}

    public DayView {
        moments = List.copyOf(moments);
        suns = List.copyOf(suns);
        notes = List.copyOf(notes);
    }

    double firstHour() {
        return moments.isEmpty() ? 0 : moments.get(0).hour();
    }

    /** The most watts there are. */
    double mostW() {
        return moments.stream()
                .mapToDouble(moment -> Math.max(orZero(moment.harvestW()), orZero(moment.consumptionW())))
                .max()
                .orElse(0);
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
