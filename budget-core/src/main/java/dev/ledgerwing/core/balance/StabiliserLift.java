package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.build.Tail;
import java.util.Optional;

/**
 * How much the stabiliser lifts as the angle of attack grows, and where.
 *
 * @param share K = eta_t (S_t / S) (a_t / a_w) (1 - d epsilon / d alpha): its lift for each unit of lift of the wing
 * @param armInChords l'/c, from the aerodynamic centre of the wing to that of the stabiliser in MACs of the wing, aft
 *     positive; negative for a canard
 */
public record StabiliserLift(double share, double armInChords) {

    /**
     * Of a tail or canard. The lift of a V-tail is that of its true area and its true aspect ratio times cos^2 of its dihedral,
     * once for the angle of attack that its panels see and once for the part of their lift that points up; the area is not
     * projected on top of that. Ahead of the wing there is no downwash; what a canard does to the flow over the wing, and the wing's upwash
     * at the canard, are left out, and both would move the neutral point forward.
     */
    static StabiliserLift of(Planform wing, Tail tail) {
        Optional<Planform> seen = Planform.of(tail.surface());
        if (seen.isEmpty()) {
            return new StabiliserLift(0, 0); // upright fins alone do nothing in pitch
        }
        Planform flat = Planform.unfolded(tail.surface());
        double arm = (seen.get().quarterChordXMm() - wing.quarterChordXMm()) / wing.macMm();
        double downwash = arm > 0 ? LiftSlope.downwash(wing) : 0;
        double areas = flat.areaMm2() * cosSquared(tail.surface()) / wing.areaMm2();
        double slopes = LiftSlope.perRadian(flat) / LiftSlope.perRadian(wing);
        return new StabiliserLift(tail.efficiency() * areas * slopes * (1 - downwash), arm);
    }

    /** Mean of cos^2 of the dihedral, weighted by true area. */
    private static double cosSquared(Surface surface) {
        double sum = 0;
        double area = 0;
        for (Panel panel : surface.panels()) {
            double cos = Math.cos(Math.toRadians(panel.dihedralDeg()));
            double own = (panel.rootChord().mm() + panel.tipChord().mm())
                    * panel.span().mm();
            sum += own * cos * cos;
            area += own;
        }
        return sum / area;
    }

    /**
     * How far it moves the neutral point, in chords, aft positive: K (l'/c) / (1 + K). The stabiliser adds to the lift of the
     * whole; leaving out 1 + K would overstate the margin.
     */
    public double neutralPointShift() {
        return share * armInChords / (1 + share);
    }

    /** K / (1 + K): how far the neutral point follows the stabiliser. */
    public double leverage() {
        return share / (1 + share);
    }

    public boolean isCanard() {
        return armInChords < 0;
    }
}
