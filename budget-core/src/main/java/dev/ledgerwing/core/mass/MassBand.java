package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.quantity.Mass;

/** The masses within which the final one lies in 95 cases of 100, if everything aboard has a line. */
public record MassBand(Mass low, Mass high, Mass halfWidth) {

    static MassBand around(Mass middle, Mass halfWidth) {
        return new MassBand(middle.minus(halfWidth), middle.plus(halfWidth), halfWidth);
    }
}
