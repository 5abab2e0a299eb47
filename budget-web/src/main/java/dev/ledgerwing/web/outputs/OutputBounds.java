package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.quantity.NumberUnit;
import dev.ledgerwing.web.forms.Bounds;

/** How far the figures of outputs may go: what the record takes, told at the field before the record has to refuse it. */
final class OutputBounds {

    static final int MOST_PORTS = 100;
    static final Bounds TYPICAL = new Bounds(NumberUnit.AMPERE, 0, 1000);
    static final Bounds PEAK = new Bounds(NumberUnit.AMPERE, 0, 2000);
    static final Bounds PLUGS = new Bounds(NumberUnit.AMPERE, 0.01, 1000);

    static final int LARGEST_NUMBER = 999;
    static final int MOST_IN_A_BANK = 64;
    static final Bounds RATE = new Bounds(NumberUnit.HERTZ, 1, 100_000);
    static final Bounds PULSE = new Bounds(NumberUnit.MICROSECOND, 100, 20_000);
    static final int MOST_PIECES = 1000;

    private OutputBounds() {}
}
