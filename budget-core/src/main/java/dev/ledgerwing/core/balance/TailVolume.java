package dev.ledgerwing.core.balance;

/**
 * The tail volume V_H = l_t S_t / (c S) and the neutral point it gives in the textbook form, with l_t from the CG to the
 * aerodynamic centre of the tail (Anderson, Introduction to Flight, chapter 7, from memory). A check of the exact form of
 * {@link StabiliserLift}, which it differs from by leaving out that the tail adds to the lift of the whole: with V_H held
 * fixed it overstates the static margin, by 2 to 9 per cent of the chord on usual airframes.
 *
 * @param ratio V_H, a plain number
 */
public record TailVolume(double ratio) {

    /** From lengths in one unit and areas in its square: l_t S_t / (c S). */
    public static TailVolume of(double tailArm, double tailArea, double chord, double wingArea) {
        return new TailVolume(tailArm * tailArea / (chord * wingArea));
    }

    /**
     * h_n = h_ac + V_H (a_t / a) (1 - d epsilon / d alpha), in chords behind the leading edge.
     *
     * @param aerodynamicCentre h_ac of wing and body, in chords
     * @param slopeRatio a_t / a, the lift slope of the tail to that of the whole
     * @param downwash d epsilon / d alpha
     */
    public double neutralPoint(double aerodynamicCentre, double slopeRatio, double downwash) {
        return aerodynamicCentre + ratio * slopeRatio * (1 - downwash);
    }
}
