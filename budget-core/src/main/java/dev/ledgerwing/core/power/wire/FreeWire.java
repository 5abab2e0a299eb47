package dev.ledgerwing.core.power.wire;

import dev.ledgerwing.core.build.WireRun;

/**
 * Short single wires in free air: the column “maximum current for chassis wiring” of the Handbook of Electronic Tables and Formulas for
 * American Wire Gauge, as printed with the gauge table of Floyd, Electric Circuit Fundamentals. It names no insulation, and says that for
 * power transmission less is allowed.
 */
final class FreeWire {

    private static final String TABLE = "the chassis wiring column of the Handbook of Electronic Tables and Formulas";

    private static final int THICKEST = 8;

    /** Amperes from 8 AWG to 30 AWG, each gauge in its turn. */
    private static final double[] FROM_THICKEST_A = {
        73, 64, 55, 47, 41, 35, 32, 28, 22, 19, 16, 14, 11, 9, 7, 4.7, 3.5, 2.7, 2.2, 1.7, 1.4, 1.2, 0.86
    };

    private FreeWire() {}

    static Ampacity ampacity(WireRun run) {
        int row = run.awg() - THICKEST;
        return row < 0 || row >= FROM_THICKEST_A.length
                ? Ampacity.outside(run.awg(), TABLE + ", kept here from 8 to 30 AWG")
                : new Ampacity(FROM_THICKEST_A[row], false, TABLE + ", for short wires lying free");
    }
}
