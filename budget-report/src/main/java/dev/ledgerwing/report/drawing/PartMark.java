package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The parts of one line of the ledger, as they are drawn.
 *
 * @param mass of all pieces together; null = not known
 * @param station where they sit in the design load case; null = not known
 * @param mirroredAtYMm half of them sit this far to the left and half to the right; null = all at the station
 */
public record PartMark(
        String name,
        @Nullable Mass mass,
        @Nullable Station station,
        @Nullable Double mirroredAtYMm,
        Kind kind) {

    /** What is told apart in the drawing. */
    public enum Kind {
        /** Stays where it is. */
        FIXED,
        /** May be moved within its travel. */
        MOVABLE,
        /** Aboard in the load case only, no part of the build. */
        EXTRA
    }

    boolean isPlaced() {
        return station != null && mass != null;
    }

    double xMmOrZero() {
        return station == null ? 0 : station.x().mm();
    }

    double yMmOrZero() {
        return station == null ? 0 : station.y().mm();
    }

    double gramsOrZero() {
        return mass == null ? 0 : mass.grams();
    }

    Pen pen() {
        return pen(kind);
    }

    static Pen pen(Kind kind) {
        return switch (kind) {
            case FIXED -> Pen.PART;
            case MOVABLE -> Pen.MOVABLE;
            case EXTRA -> Pen.EXTRA;
        };
    }
}
