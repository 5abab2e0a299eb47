package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.quantity.Mass;

/**
 * What weighing one row would take off the forecast.
 *
 * @param before half the width of the 95 per cent band now
 * @param after half its width once each piece of the row has been weighed
 */
public record WeighNext(MassRow row, Mass before, Mass after) {

    /** What it takes off half the width of the band. */
    public Mass gain() {
        return before.minus(after);
    }
}
