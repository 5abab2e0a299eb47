package dev.ledgerwing.core.power.solar;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.function.Function;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.jspecify.annotations.Nullable;

/**
 * When the sun comes up and goes down on one date by the clock on the field, seen from the ground; hours since midnight.
 *
 * @param riseHour null where it does not rise on this date, and {@code setHour} where it does not set
 */
public record DaySun(
        Kind kind, @Nullable Double riseHour, @Nullable Double setHour) {

    /** What kind of a day it is. */
    public enum Kind {
        DAY_AND_NIGHT,
        POLAR_DAY,
        POLAR_NIGHT
    }

    static DaySun of(LocalDate date, ZoneOffset offset, double latitudeDeg, double longitudeDeg) {
        Search search = new Search(date, offset, latitudeDeg, longitudeDeg);
        Double rise = search.hour(SunriseResult.RegularDay::sunrise);
        Double set = search.hour(SunriseResult.RegularDay::sunset);
        if (rise != null || set != null) {
            return new DaySun(Kind.DAY_AND_NIGHT, rise, set);
        }
        return new DaySun(search.isUpAtNoon() ? Kind.POLAR_DAY : Kind.POLAR_NIGHT, null, null);
    }

    /** The library's events belong to a date of its own counting, so the neighbouring dates are asked too and held against the clock. */
    private record Search(LocalDate date, ZoneOffset offset, double latitudeDeg, double longitudeDeg) {

        @Nullable
        Double hour(Function<SunriseResult.RegularDay, ZonedDateTime> event) {
            ZonedDateTime midnight = date.atStartOfDay(offset);
            for (int days : new int[] {0, -1, 1}) {
                if (result(date.plusDays(days)) instanceof SunriseResult.RegularDay day) {
                    double hour = Duration.between(midnight, event.apply(day)).toMillis() / 3_600_000.0;
                    if (hour >= 0 && hour < 24) {
                        return hour;
                    }
                }
            }
            return null;
        }

        boolean isUpAtNoon() {
            return result(date) instanceof SunriseResult.AllDay;
        }

        private SunriseResult result(LocalDate day) {
            return SPA.calculateSunriseTransitSet(
                    day.atTime(12, 0).atZone(offset), latitudeDeg, longitudeDeg, DeltaT.estimate(day));
        }
    }
}
