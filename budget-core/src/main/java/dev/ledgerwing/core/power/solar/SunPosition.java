package dev.ledgerwing.core.power.solar;

import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun appears to stand, the bending of light in the air included.
 *
 * @param zenithDeg from straight up, and {@code azimuthDeg} clockwise from north
 */
record SunPosition(double zenithDeg, double azimuthDeg) {

    /** Solar position algorithm of Reda and Andreas, Solar Energy 76(5), 577-589, 2004 (NREL/TP-560-34302). */
    static SunPosition at(ZonedDateTime moment, Standpoint from) {
        SolarPosition position = SPA.calculateSolarPosition(
                moment,
                from.latitudeDeg(),
                from.longitudeDeg(),
                from.elevationM(),
                DeltaT.estimate(moment.toLocalDate()),
                from.pressureHPa(),
                from.airC());
        return new SunPosition(position.zenithAngle(), position.azimuth());
    }

    boolean isUp() {
        return zenithDeg < 90;
    }

    double zenith() {
        return Math.toRadians(zenithDeg);
    }
}
