package dev.ledgerwing.core.power.solar;

/** How warm cells get in the sun. */
final class CellTemperature {

    /**
     * Temperature in 800 W/m2 and air of 20 °C: Ledgerwing's own choice. It stands for 0.031 K m2/W, between free-standing cells
     * (0.0208) and cells with no air behind them (0.0563, both published as representative).
     */
    static final double NOMINAL_C = 45;

    private CellTemperature() {}

    /** In °C: Tc = Ta + (NOCT - 20) / 800 x G, the linear rule of Ross with the nominal operating cell temperature. */
    static double of(double airC, double lightWm2, double nominalC) {
        return airC + (nominalC - 20) / 800 * lightWm2;
    }

    static double of(double airC, double lightWm2) {
        return of(airC, lightWm2, NOMINAL_C);
    }
}
