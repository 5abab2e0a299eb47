package dev.ledgerwing.core.power.charging;

import dev.ledgerwing.core.build.SolarArray;
import org.jspecify.annotations.Nullable;

/**
 * Volts of solar cells that are colder or warmer than at standard conditions. The voltage of the best point moves by the same volts as the
 * open one: both move with the junctions (by derivation). Null = not known; a coefficient is never assumed.
 */
record CellVolts(SolarArray array) {

    private static final double STANDARD_C = 25;

    @Nullable
    Double openV(double cellC) {
        Double openV = array.openCircuitV();
        Double shiftV = shiftV(cellC);
        return openV == null || shiftV == null ? null : openV + shiftV;
    }

    @Nullable
    Double bestV(double cellC) {
        Double bestV = array.maxPowerV();
        Double shiftV = shiftV(cellC);
        return bestV == null || shiftV == null ? null : bestV + shiftV;
    }

    private @Nullable Double shiftV(double cellC) {
        Double openV = array.openCircuitV();
        Double percentPerC = array.voltagePercentPerC();
        return openV == null || percentPerC == null ? null : openV * percentPerC / 100 * (cellC - STANDARD_C);
    }
}
