package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Moment;

/** The axes of the airframe: x aft from the datum, y to the right, z up. */
public enum Axis {
    X("x", "further aft", "further forward"),
    Y("y", "further right", "further left"),
    Z("z", "higher", "lower");

    private final String letter;
    private final String more;
    private final String less;

    Axis(String letter, String more, String less) {
        this.letter = letter;
        this.more = more;
        this.less = less;
    }

    public String letter() {
        return letter;
    }

    /** In words, where something lies by a difference along the axis: {@code further aft}. */
    public String words(double differenceMm) {
        return differenceMm < 0 ? less : more;
    }

    public Length of(Station station) {
        return switch (this) {
            case X -> station.x();
            case Y -> station.y();
            case Z -> station.z();
        };
    }

    public Moment of(Moments moments) {
        return switch (this) {
            case X -> moments.x();
            case Y -> moments.y();
            case Z -> moments.z();
        };
    }

    double mm(Station station) {
        return of(station).mm();
    }

    double mm(Cg cg) {
        return switch (this) {
            case X -> cg.xMm();
            case Y -> cg.yMm();
            case Z -> cg.zMm();
        };
    }

    double mm(CgUncertainty uncertainty) {
        return switch (this) {
            case X -> uncertainty.xMm();
            case Y -> uncertainty.yMm();
            case Z -> uncertainty.zMm();
        };
    }
}
