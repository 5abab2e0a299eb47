package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.power.wire.Wires;

/**
 * A load as the solver sees it, found out once.
 *
 * @param isConstantPower whether it draws the same watts at any voltage
 * @param leadOhm of the leads of one piece, out and back; none recorded counts as none
 */
record LoadModel(RailLoad load, boolean isConstantPower, double leadOhm) {

    static LoadModel of(RailLoad load, double conductorC) {
        WireRun lead = load.load().lead();
        return new LoadModel(load, load.isConstantPower(), lead == null ? 0 : Wires.loopOhm(lead, conductorC));
    }

    /** At a rail's voltage, of all its pieces, when it is {@code demandA} at nominal voltage. */
    double amperes(double demandA, double railV) {
        return isConstantPower ? load.watts(demandA) / railV : demandA;
    }

    double atLoadV(double amperes, double railV) {
        return railV - amperes / load.line().quantity() * leadOhm;
    }
}
