package dev.ledgerwing.core.power.network;

import org.jspecify.annotations.Nullable;

/**
 * A stretch of a feed that is solved as one: resistance and diodes, or a regulator.
 *
 * @param ohm resistance, and {@code forwardV} voltage lost at any current; both 0 for a regulator
 * @param conversion null = no regulator
 */
record Step(double ohm, double forwardV, @Nullable Conversion conversion) {

    /** The highest voltage behind it, without any current. */
    double idleV(double inV) {
        return conversion == null ? inV - forwardV : conversion.outV(inV);
    }
}
