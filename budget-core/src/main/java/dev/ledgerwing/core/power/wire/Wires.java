package dev.ledgerwing.core.power.wire;

import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.quantity.Mass;

/** What follows from a run of wires as it is drawn. */
public final class Wires {

    /** What wire weighs with its insulation against its bare copper. Ledgerwing's own choice; from no publication. */
    public static final double INSULATION_FACTOR = 1.5;

    private static final double MM_PER_M = 1000;

    private Wires() {}

    /** Ohms of one pair, out and back, with the copper at {@code conductorC}. */
    public static double loopOhm(WireRun run, double conductorC) {
        return loopOhm(WireGauge.of(run.awg()).ohmPerM(conductorC), lengthM(run));
    }

    /** Current goes out on one wire and comes back on another: {@code oneWayM} counts twice. */
    static double loopOhm(double ohmPerM, double oneWayM) {
        return 2 * oneWayM * ohmPerM;
    }

    /** All conductors of the run once, copper and insulation. */
    public static Mass mass(WireRun run) {
        double copperG = WireGauge.of(run.awg()).copperGPerM() * lengthM(run) * run.conductors();
        return Mass.ofGrams(INSULATION_FACTOR * copperG);
    }

    private static double lengthM(WireRun run) {
        return run.length().mm() / MM_PER_M;
    }
}
