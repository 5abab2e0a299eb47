package dev.ledgerwing.core.balance;

/** The band the CG is allowed in, in millimetres aft of the datum. */
public record BalanceBand(Source source, double forwardXMm, double aftXMm) {

    /** Where the band comes from. */
    public enum Source {
        DECLARED("declared"),
        DERIVED("from the neutral point and the static margin wanted");

        private final String words;

        Source(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public double widthMm() {
        return aftXMm - forwardXMm;
    }

    /** How far a CG lies inside the nearer limit; negative outside. */
    public double insideMm(double xMm) {
        return Math.min(xMm - forwardXMm, aftXMm - xMm);
    }

    /** The limit that a CG is nearest to, or outside of. */
    public double nearerLimitXMm(double xMm) {
        return isNearerForward(xMm) ? forwardXMm : aftXMm;
    }

    public boolean isNearerForward(double xMm) {
        return xMm - forwardXMm < aftXMm - xMm;
    }
}
