package dev.ledgerwing.core.power.solar;

/**
 * What cells give in one light at one temperature.
 *
 * @param light W/m2 on the cells
 * @param cellC their temperature
 */
record CellPower(double light, double cellC) {

    private static final double STANDARD_LIGHT = 1000;
    private static final double STANDARD_C = 25;

    /** Watts at the best point: P = P0 G / 1000 (1 + gamma (Tc - 25)), never less than 0. */
    double best(double bestW, double percentPerC) {
        return Math.max(0, bestW * share() * warmed(percentPerC));
    }

    /**
     * Watts into a pack of {@code packV} that the cells are tied to. Current over voltage is taken as two straight lines, from short
     * circuit to the best point to open circuit: real cells, whose curve bulges outwards, give no less. The current at the best point
     * is taken not to change with temperature, so that the voltage there changes as the power does.
     */
    double tiedTo(double packV, Curve curve) {
        double bestV = curve.points().bestV() * warmed(curve.powerPercentPerC());
        double openV = curve.points().openV() * warmed(curve.voltagePercentPerC());
        if (packV >= openV || bestV <= 0) {
            return 0;
        }
        double bestA = curve.points().bestA();
        if (packV > bestV) {
            return share() * packV * bestA * (openV - packV) / (openV - bestV);
        }
        double shortA = Math.max(bestA, curve.points().shortA());
        return share() * packV * (shortA + (bestA - shortA) * packV / bestV);
    }

    private double share() {
        return light / STANDARD_LIGHT;
    }

    private double warmed(double percentPerC) {
        return 1 + percentPerC / 100 * (cellC - STANDARD_C);
    }

    /** The points of the curve of cells at standard conditions that are published with them. */
    record Points(double bestW, double bestV, double openV, double shortA) {

        double bestA() {
            return bestW / bestV;
        }
    }

    /** How the points change with each degree: power and voltage at the best point by the first, the open voltage by the second. */
    record Curve(Points points, double powerPercentPerC, double voltagePercentPerC) {}
}
