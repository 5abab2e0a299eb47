package dev.ledgerwing.core.power.solar;

/** Pressure of the standard atmosphere by height. */
final class AirPressure {

    static final double SEA_LEVEL_HPA = 1013.25;

    private static final double TROPOPAUSE_M = 11_000;
    /** R T / g = 287.053 x 216.65 / 9.80665, by derivation. */
    private static final double SCALE_HEIGHT_M = 6341.6;

    private AirPressure() {}

    /**
     * In hPa. Below 11 km the line of falling temperature, p = ((44331.514 - h) / 11880.516)^(1 / 0.1902632) (as in the open-source
     * pvlib-python); above it air of one temperature, p = p(11 km) exp(-(h - 11 km) / 6341.6 m).
     */
    static double atHPa(double elevationM) {
        double belowM = Math.min(elevationM, TROPOPAUSE_M);
        double pressureHPa = Math.pow((44331.514 - belowM) / 11880.516, 1 / 0.1902632);
        return pressureHPa * Math.exp((belowM - elevationM) / SCALE_HEIGHT_M);
    }
}
