package dev.ledgerwing.core.power.solar;

import dev.ledgerwing.core.build.SolarArray;
import org.jspecify.annotations.Nullable;

/** The cells of one source, everything needed being known: what of their power arrives at the pack. */
sealed interface CellOutput {

    /** Watts that arrive with {@code cells} as bright and as warm as they are. */
    double watts(CellPower cells);

    /**
     * Cells kept at their best point by a tracker.
     *
     * @param arriving share that is left behind the tracker
     */
    record Tracked(double bestW, double percentPerC, double arriving) implements CellOutput {

        @Override
        public double watts(CellPower cells) {
            return arriving * cells.best(bestW, percentPerC);
        }
    }

    /** Cells held at the voltage of the pack. */
    record Tied(CellPower.Curve curve, double packV) implements CellOutput {

        @Override
        public double watts(CellPower cells) {
            return cells.tiedTo(packV, curve);
        }
    }

    /** Null where anything is missing: {@link CellGaps} names it. */
    static @Nullable CellOutput of(SolarArray array, @Nullable Double packV) {
        return array.connection() == SolarArray.Connection.TRACKER ? tracked(array) : tied(array, packV);
    }

    private static @Nullable CellOutput tracked(SolarArray array) {
        Double watts = array.maxPowerW();
        Double gamma = array.powerPercentPerC();
        Double efficiency = array.trackerEfficiencyPercent();
        return watts == null || gamma == null || efficiency == null
                ? null
                : new Tracked(watts, gamma, efficiency / 100);
    }

    private static @Nullable CellOutput tied(SolarArray array, @Nullable Double packV) {
        CellPower.Points points = points(array);
        Double gamma = array.powerPercentPerC();
        Double beta = array.voltagePercentPerC();
        return points == null || gamma == null || beta == null || packV == null
                ? null
                : new Tied(new CellPower.Curve(points, gamma, beta), packV);
    }

    private static CellPower.@Nullable Points points(SolarArray array) {
        Double watts = array.maxPowerW();
        Double bestV = array.maxPowerV();
        Double openV = array.openCircuitV();
        Double shortA = array.shortCircuitA();
        return watts == null || bestV == null || openV == null || shortA == null
                ? null
                : new CellPower.Points(watts, bestV, openV, shortA);
    }
}
