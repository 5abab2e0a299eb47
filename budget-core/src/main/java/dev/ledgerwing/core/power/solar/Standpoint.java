package dev.ledgerwing.core.power.solar;

import dev.ledgerwing.core.build.SolarDay;

/**
 * From where the sun is looked at.
 *
 * @param latitudeDeg north positive, and {@code longitudeDeg} east positive
 * @param elevationM above the sea
 * @param pressureHPa and {@code airC} of the air around: they bend the light near the horizon
 */
record Standpoint(double latitudeDeg, double longitudeDeg, double elevationM, double pressureHPa, double airC) {

    static Standpoint of(SolarDay day) {
        double pressureHPa = AirPressure.atHPa(day.elevationM());
        return new Standpoint(day.latitudeDeg(), day.longitudeDeg(), day.elevationM(), pressureHPa, day.airC());
    }
}
