package dev.ledgerwing.core.quantity;

/** A length or a coordinate in whole micrometres, of either sign. */
public record Length(long um) implements Comparable<Length> {

    public static final Length ZERO = new Length(0);

    private static final double UM_PER_MM = 1000;
    private static final double LARGEST_MM = 1e9;

    /** The length nearest to {@code mm}; finite and at most 10^9 mm either way. */
    public static Length ofMm(double mm) {
        if (!(Math.abs(mm) <= LARGEST_MM)) {
            throw new IllegalArgumentException("length must be a finite number of millimetres up to 1e9, was " + mm);
        }
        return new Length(Mass.roundAwayFromZero(mm * UM_PER_MM));
    }

    public double mm() {
        return um / UM_PER_MM;
    }

    public Length plus(Length other) {
        return new Length(Math.addExact(um, other.um));
    }

    public Length minus(Length other) {
        return new Length(Math.subtractExact(um, other.um));
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(um, other.um);
    }
}
