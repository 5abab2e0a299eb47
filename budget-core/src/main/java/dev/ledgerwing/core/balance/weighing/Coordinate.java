package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.quantity.Length;

/** Where something lies along one axis, in millimetres, and the standard uncertainty of that. */
public record Coordinate(double mm, double uncertaintyMm) {

    public Length length() {
        return Length.ofMm(mm);
    }

    public Length uncertainty() {
        return Length.ofMm(uncertaintyMm);
    }
}
