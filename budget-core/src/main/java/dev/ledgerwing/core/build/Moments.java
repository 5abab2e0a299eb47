package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.Moment;

/** First moments about the datum along the three axes: aft, to the right, up. */
public record Moments(Moment x, Moment y, Moment z) {

    public static final Moments ZERO = new Moments(Moment.ZERO, Moment.ZERO, Moment.ZERO);

    public static Moments of(Mass mass, Station station) {
        return new Moments(Moment.of(mass, station.x()), Moment.of(mass, station.y()), Moment.of(mass, station.z()));
    }

    public Moments plus(Moments other) {
        return new Moments(x.plus(other.x), y.plus(other.y), z.plus(other.z));
    }

    public Moments minus(Moments other) {
        return new Moments(x.minus(other.x), y.minus(other.y), z.minus(other.z));
    }
}
