package dev.ledgerwing.report.drawing;

/** A part on the beam: a circle of an area that stands for its mass. */
record Load(PartMark part, Spot centre, double radius) {

    boolean isClearOf(Load other, double gap) {
        double across = centre.x() - other.centre.x();
        double down = centre.y() - other.centre.y();
        double least = radius + other.radius + gap;
        return across * across + down * down >= least * least - 1e-6;
    }
}
