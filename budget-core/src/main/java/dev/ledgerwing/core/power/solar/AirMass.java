package dev.ledgerwing.core.power.solar;

/** How much air the light comes through, as a multiple of what lies straight above at sea level. */
final class AirMass {

    private AirMass() {}

    /** 1 / (cos z + 0.50572 (96.07995 - z)^-1.6364), z in degrees, 0 to 90: Kasten and Young, Applied Optics 28, 1989. */
    static double relative(double zenithDeg) {
        return 1 / (Math.cos(Math.toRadians(zenithDeg)) + 0.50572 * Math.pow(96.07995 - zenithDeg, -1.6364));
    }

    /** The same at another pressure than that of sea level. */
    static double absolute(double relative, double pressureHPa) {
        return relative * pressureHPa / AirPressure.SEA_LEVEL_HPA;
    }
}
