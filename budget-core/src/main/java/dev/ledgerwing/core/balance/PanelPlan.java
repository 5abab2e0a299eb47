package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Panel;

/**
 * One straight-tapered panel where it lies in the airframe, in millimetres. The right side of a mirrored surface.
 *
 * @param rootXMm leading edge of its root
 * @param spanMm along the panel
 * @param tipOffsetMm leading edge of the tip aft of that of the root
 */
public record PanelPlan(
        double rootXMm,
        double rootYMm,
        double rootZMm,
        double spanMm,
        double rootChordMm,
        double tipChordMm,
        double tipOffsetMm,
        double dihedralDeg) {

    private static final double UPRIGHT_DEG = 90;

    static PanelPlan of(Panel panel, double rootXMm, double rootYMm, double rootZMm) {
        return new PanelPlan(
                rootXMm,
                rootYMm,
                rootZMm,
                panel.span().mm(),
                panel.rootChord().mm(),
                panel.tipChord().mm(),
                panel.tipOffset().mm(),
                panel.dihedralDeg());
    }

    /** Span seen from above, b cos(dihedral); exactly 0 for an upright panel. */
    public double projectedSpanMm() {
        return Math.abs(dihedralDeg) == UPRIGHT_DEG ? 0 : spanMm * Math.cos(Math.toRadians(dihedralDeg));
    }

    public double tipXMm() {
        return rootXMm + tipOffsetMm;
    }

    public double tipYMm() {
        return rootYMm + projectedSpanMm();
    }

    public double tipZMm() {
        return rootZMm + riseMm();
    }

    private double riseMm() {
        return spanMm * Math.sin(Math.toRadians(dihedralDeg));
    }

    /** (c1 + c2) / 2 b cos(dihedral), one side. */
    double areaMm2() {
        return (rootChordMm + tipChordMm) / 2 * projectedSpanMm();
    }

    /** (2/3) (c1^2 + c1 c2 + c2^2) / (c1 + c2). */
    double macMm() {
        return 2.0
                / 3
                * (rootChordMm * rootChordMm + rootChordMm * tipChordMm + tipChordMm * tipChordMm)
                / (rootChordMm + tipChordMm);
    }

    double macXMm() {
        return rootXMm + tipOffsetMm * macOutboard();
    }

    double macYMm() {
        return rootYMm + projectedSpanMm() * macOutboard();
    }

    double macZMm() {
        return rootZMm + riseMm() * macOutboard();
    }

    /** Where along the span the chord equals the MAC, as a fraction of it: (c1 + 2 c2) / (3 (c1 + c2)). */
    private double macOutboard() {
        return (rootChordMm + 2 * tipChordMm) / (3 * (rootChordMm + tipChordMm));
    }

    /** Tangent of the sweep, seen from above, of the line through {@code fraction} of the chord; the panel has an area. */
    double tanSweep(double fraction) {
        return (tipOffsetMm + fraction * (tipChordMm - rootChordMm)) / projectedSpanMm();
    }

    boolean isAt(double yMm) {
        return projectedSpanMm() > 0 && yMm >= rootYMm && yMm <= tipYMm();
    }

    Planform.Chord chordAt(double yMm) {
        double outboard = (yMm - rootYMm) / projectedSpanMm();
        return new Planform.Chord(
                rootXMm + outboard * tipOffsetMm, rootChordMm + outboard * (tipChordMm - rootChordMm));
    }
}
