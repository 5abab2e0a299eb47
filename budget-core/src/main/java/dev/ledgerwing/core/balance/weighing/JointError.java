package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;

/**
 * What one source of error, off by its standard uncertainty, does to a mass and to its first moments at the same time: the products
 * c_i u(x_i) of JCGM 100:2008, 5.1.3, in grams and gram-millimetres. Different errors are independent of each other.
 */
public record JointError(double massG, double xGMm, double yGMm, double zGMm) {

    static final JointError NONE = new JointError(0, 0, 0, 0);

    public double of(Axis axis) {
        return switch (axis) {
            case X -> xGMm;
            case Y -> yGMm;
            case Z -> zGMm;
        };
    }

    JointError plus(JointError other) {
        return new JointError(massG + other.massG, xGMm + other.xGMm, yGMm + other.yGMm, zGMm + other.zGMm);
    }

    JointError times(double factor) {
        return new JointError(massG * factor, xGMm * factor, yGMm * factor, zGMm * factor);
    }
}
