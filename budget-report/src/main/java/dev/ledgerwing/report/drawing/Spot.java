package dev.ledgerwing.report.drawing;

/** A place on a drawing in its own units: to the right, and down. */
record Spot(double x, double y) {

    Spot plus(double right, double down) {
        return new Spot(x + right, y + down);
    }
}
