package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.quantity.Mass;

/**
 * How far the reading of a pair of scales may be off.
 *
 * @param step the last digit they show, d
 * @param maxError greatest error either way, a
 */
public record ScaleError(Mass step, Mass maxError) {

    /**
     * Standard uncertainty of one reading in grams: sqrt(d^2/12 + a^2/3), each a rectangular distribution (JCGM 100:2008, 4.3.7
     * and F.2.2.1).
     */
    public double ofReadingG() {
        double d = step.grams();
        double a = maxError.grams();
        return Math.sqrt(d * d / 12 + a * a / 3);
    }

    /** The most that one reading can be off either way, in grams: d/2 + a, the ends of both distributions. */
    public double greatestG() {
        return step.grams() / 2 + maxError.grams();
    }

    /** Of one weighing in grams: sqrt(2) times as much when a tare was taken, since two readings err. */
    public double ofWeighingG(boolean tareTaken) {
        return tareTaken ? Math.sqrt(2) * ofReadingG() : ofReadingG();
    }
}
