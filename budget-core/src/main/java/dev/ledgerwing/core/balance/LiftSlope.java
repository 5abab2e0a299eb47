package dev.ledgerwing.core.balance;

/**
 * Lift-curve slopes per radian and downwash, from the shape alone, for subsonic speed and a section slope of 2 pi.
 */
final class LiftSlope {

    private LiftSlope() {}

    /**
     * a = 2 pi AR / (2 + sqrt(4 + AR^2 (1 + tan^2 sweep))), sweep of the half-chord line: the formula of Helmbold in the form
     * that Polhamus gave it for swept wings (from memory).
     */
    static double perRadian(Planform surface) {
        double aspectRatio = surface.aspectRatio();
        double tan = surface.tanSweep(0.5);
        return 2 * Math.PI * aspectRatio / (2 + Math.sqrt(4 + aspectRatio * aspectRatio * (1 + tan * tan)));
    }

    /** d epsilon / d alpha = 2 a / (pi AR), far behind a wing of elliptic loading (Anderson, Introduction to Flight, from memory). */
    static double downwash(Planform wing) {
        return 2 * perRadian(wing) / (Math.PI * wing.aspectRatio());
    }
}
