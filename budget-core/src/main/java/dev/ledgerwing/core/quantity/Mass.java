package dev.ledgerwing.core.quantity;

/**
 * A mass in whole milligrams, of either sign (differences and bookings may be negative). Whole numbers make sums exact:
 * their order never matters.
 */
public record Mass(long mg) implements Comparable<Mass> {

    public static final Mass ZERO = new Mass(0);

    private static final double MG_PER_G = 1000;
    /** More than the largest ledger that can be written down, and still exact in milligrams. */
    private static final double LARGEST_G = 1e15;

    /** The mass nearest to {@code grams}; half a milligram rounds away from zero. Finite and at most 10^15 g either way. */
    public static Mass ofGrams(double grams) {
        if (!(Math.abs(grams) <= LARGEST_G)) {
            throw new IllegalArgumentException("mass must be a finite number of grams up to 1e15, was " + grams);
        }
        return new Mass(roundAwayFromZero(grams * MG_PER_G));
    }

    static long roundAwayFromZero(double value) {
        return (long) Math.signum(value) * Math.round(Math.abs(value));
    }

    public double grams() {
        return mg / MG_PER_G;
    }

    public Mass plus(Mass other) {
        return new Mass(Math.addExact(mg, other.mg));
    }

    public Mass minus(Mass other) {
        return new Mass(Math.subtractExact(mg, other.mg));
    }

    public Mass times(int factor) {
        return new Mass(Math.multiplyExact(mg, (long) factor));
    }

    /** This share of the mass, rounded to the milligram; {@code percent} is finite. */
    public Mass percent(double percent) {
        return new Mass(roundAwayFromZero(mg * percent / 100));
    }

    public boolean isNegative() {
        return mg < 0;
    }

    @Override
    public int compareTo(Mass other) {
        return Long.compare(mg, other.mg);
    }
}
