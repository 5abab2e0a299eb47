package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.FeedElement;

/**
 * How an element stands in a solution, all of those side by side together.
 *
 * @param inV voltage before and {@code outV} behind it, {@code inA} current into it and {@code outA} out of it
 */
public record ElementFlow(
        ElementAt at, FeedElement element, int inUse, double inV, double inA, double outV, double outA) {

    ElementFlow(PlacedElement placed, double inV, double inA, double outV, double outA) {
        this(placed.at(), placed.element(), placed.inUse(), inV, inA, outV, outA);
    }

    /** Voltage lost in it; of a regulator, which is meant to lower it, too. */
    public double dropV() {
        return inV - outV;
    }

    /** Heat of all of them together, in watts. */
    public double heatW() {
        return inV * inA - outV * outA;
    }

    /**
     * What one of them must be able to carry, in amperes. Nobody can say how those share that are joined at both ends: regulators, motor
     * controllers, diodes, fuses and sensors are judged as carrying all, wires, plugs and contacts as carrying half as much again as an
     * equal share. Of those in branches of their own each carries its share.
     */
    public double ofOneA() {
        return outA * Shares.ofOne(element, inUse);
    }
}
