package dev.ledgerwing.core.balance.weighing;

/**
 * How the airframe stood. With the nose up by theta the upward direction is (-sin theta, 0, cos theta) in its own axes, and scales see
 * of each point how far aft it lies when measured level: h = x cos theta + z sin theta.
 */
record Pose(double cos, double sin) {

    static Pose noseUp(double degrees) {
        double theta = Math.toRadians(degrees);
        return new Pose(Math.cos(theta), Math.sin(theta));
    }

    boolean isLevel() {
        return sin == 0;
    }

    double aftMm(double xMm, double zMm) {
        return xMm * cos + zMm * sin;
    }
}
