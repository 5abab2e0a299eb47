package dev.ledgerwing.core.build;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A day in the sun, to see whether the cells carry the flight through it.
 *
 * @param place what the team calls the place
 * @param latitudeDeg north positive, and {@code longitudeDeg} east positive
 * @param utcOffsetHours what the clock on the field is ahead of universal time
 * @param elevationM height above the sea that is flown at
 * @param airC temperature of the air in flight
 * @param skyPercent how much of a clear sky's light arrives: 100 = clear
 * @param chainPercent what is left of the cells' power behind wires, dirt and mismatch, the tracker not counted
 * @param headingDeg clockwise from north; null = circling, all headings alike
 * @param startHour when it begins, by the clock on the field, and {@code startPercent} how full the pack is then
 * @param phase code of the phase flown all day; null = the one that stretches
 */
public record SolarDay(
        @Nullable String place,
        double latitudeDeg,
        double longitudeDeg,
        LocalDate date,
        double utcOffsetHours,
        double elevationM,
        double airC,
        double skyPercent,
        double chainPercent,
        @Nullable Double headingDeg,
        double startHour,
        double startPercent,
        @Nullable String phase) {

    public SolarDay {
        Check.text("place", place, 200);
        Check.within("latitudeDeg", latitudeDeg, -90, 90, " degrees");
        Check.within("longitudeDeg", longitudeDeg, -180, 180, " degrees");
        Check.within("date", date.getYear(), 1950, 2200);
        Check.within("utcOffsetHours", utcOffsetHours, -14, 14, " h");
        Check.within("elevationM", elevationM, -500, 30_000, " m");
        Check.within("airC", airC, -90, 60, " °C");
        Check.within("skyPercent", skyPercent, 0, 120, " %");
        Check.within("chainPercent", chainPercent, 1, 100, " %");
        Check.within("headingDeg", headingDeg, 0, 360, " degrees");
        Check.within("startHour", startHour, 0, 24, " h");
        Check.within("startPercent", startPercent, 0, 100, " %");
    }

    SolarDay withPhase(@Nullable String changed) {
        return new SolarDay(
                place,
                latitudeDeg,
                longitudeDeg,
                date,
                utcOffsetHours,
                elevationM,
                airC,
                skyPercent,
                chainPercent,
                headingDeg,
                startHour,
                startPercent,
                changed);
    }
}
