package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;

/** A point in the airframe: x aft from the datum, y to the right, z up. May be negative. */
public record Station(Length x, Length y, Length z) {

    public Station {
        Check.coordinate("xMm", x);
        Check.coordinate("yMm", y);
        Check.coordinate("zMm", z);
    }

    /** The station {@code xMm} aft of the datum, on the centre line at the height of the datum. */
    public static Station atX(Length x) {
        return new Station(x, Length.ZERO, Length.ZERO);
    }
}
