package dev.ledgerwing.core.balance;

/** Standard uncertainty of a CG along each axis, in millimetres. */
public record CgUncertainty(double xMm, double yMm, double zMm) {

    static final CgUncertainty NONE = new CgUncertainty(0, 0, 0);
}
