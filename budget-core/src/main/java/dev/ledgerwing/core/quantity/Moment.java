package dev.ledgerwing.core.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * A first moment, mass times arm, exact in whole milligram-micrometres, of either sign. However many are added, in whatever
 * order, no digit is lost.
 */
public record Moment(BigInteger mgUm) implements Comparable<Moment> {

    public static final Moment ZERO = new Moment(BigInteger.ZERO);

    /** Milligram-micrometres in a gram-millimetre, as a power of ten. */
    private static final int PLACES = 6;

    /** {@code mass} at {@code arm} from the datum. */
    public static Moment of(Mass mass, Length arm) {
        return new Moment(BigInteger.valueOf(mass.mg()).multiply(BigInteger.valueOf(arm.um())));
    }

    public Moment plus(Moment other) {
        return new Moment(mgUm.add(other.mgUm));
    }

    public Moment minus(Moment other) {
        return new Moment(mgUm.subtract(other.mgUm));
    }

    public double gMm() {
        return new BigDecimal(mgUm, PLACES).doubleValue();
    }

    /** The arm at which {@code mass} has this moment, in millimetres; {@code mass} is not zero. */
    public double armMm(Mass mass) {
        if (mass.mg() == 0) {
            throw new IllegalArgumentException("a mass of 0 g has no arm");
        }
        return gMm() / mass.grams();
    }

    @Override
    public int compareTo(Moment other) {
        return mgUm.compareTo(other.mgUm);
    }
}
