package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Regulator;
import org.jspecify.annotations.Nullable;

/**
 * How a regulator turns one voltage and current into another; volts and amperes.
 *
 * <pre>
 * LINEAR     I_in = I_out + I_q                               V_out = min(V_set, V_in - V_drop)
 * SWITCHING  I_in = V_set I_out / (efficiency V_in) + I_q     V_out = min(V_set, V_in - V_drop), or V_set where it raises
 * </pre>
 *
 * Below its dropout the output follows the input down. A switching one is taken to draw then as if it still gave its full voltage: more
 * than it does, never less. Both shapes only ever draw more at a lower input, which the solver builds on.
 *
 * @param inputFactorV V_set/efficiency of a switching one; 0 of a linear one
 * @param raises whether it lifts a lower voltage to its own
 */
record Conversion(double outputV, double dropoutV, double inputFactorV, double quiescentA, boolean raises) {

    /** Not known counts as the best there could be here: no dropout, no loss, nothing drawn by itself. {@link Gaps} says so. */
    static Conversion of(Regulator regulator, int count, double highestInputV) {
        boolean switches = regulator.type() == Regulator.Type.SWITCHING;
        double efficiency = or(regulator.efficiencyPercent(), 100) / 100;
        return new Conversion(
                regulator.outputV(),
                or(regulator.dropoutV(), 0),
                switches ? regulator.outputV() / efficiency : 0,
                count * or(regulator.quiescentA(), 0),
                raises(regulator, highestInputV));
    }

    /**
     * A switching regulator without a dropout raises the voltage when it says itself that it works from less than it gives, or when even
     * a full pack is below what it gives.
     */
    static boolean raises(Regulator regulator, double highestInputV) {
        Double minInputV = regulator.minInputV();
        boolean worksFromLess = minInputV != null && minInputV < regulator.outputV();
        return regulator.type() == Regulator.Type.SWITCHING
                && or(regulator.dropoutV(), 0) == 0
                && (worksFromLess || highestInputV < regulator.outputV());
    }

    /** The least input at which a regulator gives its full voltage, and works at all. */
    static double leastInputV(Regulator regulator, double highestInputV) {
        double own = or(regulator.minInputV(), 0);
        return raises(regulator, highestInputV)
                ? own
                : Math.max(own, regulator.outputV() + or(regulator.dropoutV(), 0));
    }

    boolean holdsItsOutput(double inV) {
        return raises || inV - dropoutV >= outputV;
    }

    double outV(double inV) {
        return holdsItsOutput(inV) ? outputV : inV - dropoutV;
    }

    boolean switches() {
        return inputFactorV > 0;
    }

    double inA(double inV, double outA) {
        return (switches() ? inputFactorV * outA / inV : outA) + quiescentA;
    }

    private static double or(@Nullable Double value, double otherwise) {
        return value == null ? otherwise : value;
    }
}
