package dev.ledgerwing.report.drawing;

/** A rectangle of a drawing, along its edges. */
record Box(double left, double top, double right, double bottom) {

    static Box around(Spot centre, double halfWidth, double halfHeight) {
        return new Box(
                centre.x() - halfWidth, centre.y() - halfHeight, centre.x() + halfWidth, centre.y() + halfHeight);
    }

    boolean overlaps(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean isInside(Box other) {
        return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }
}
