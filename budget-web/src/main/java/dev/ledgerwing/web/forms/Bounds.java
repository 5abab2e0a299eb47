package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.NumberUnit;

/** What a figure counts in, and the least and the most that the record takes of it. */
public record Bounds(NumberUnit unit, double least, double most) {

    private static final int PLACES = 4;

    public boolean hold(double amount) {
        return amount >= least && amount <= most;
    }

    /** What is said where it does not hold. */
    public String sentence() {
        return "This is from " + Figures.number(least, PLACES) + " to " + Figures.number(most, PLACES) + "\u2009"
                + unit.symbol() + ".";
    }
}
