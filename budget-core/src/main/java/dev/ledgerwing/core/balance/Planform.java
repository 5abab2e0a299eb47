package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Surface;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A surface seen from above, in millimetres. Areas, spans and the mean aerodynamic chord (MAC) are of the projection. MAC and the
 * place of its leading edge are those of the panels weighted by area, which is exact for straight-tapered panels: the integral of
 * c^2 is additive. The MAC is not the geometric mean chord S/b. (Raymer, Aircraft Design: A Conceptual Approach, from memory.)
 *
 * @param panels from the root out; of a mirrored surface the right side
 * @param areaMm2 both sides of a mirrored surface
 * @param macXMm leading edge of the MAC; {@code macYMm} and {@code macZMm} likewise, on the right side of a mirrored surface
 */
public record Planform(
        boolean mirrored,
        List<PanelPlan> panels,
        double areaMm2,
        double macMm,
        double macXMm,
        double macYMm,
        double macZMm) {

    private static final double MM2_PER_M2 = 1e6;

    /** The chord at one span station: its leading edge aft of the datum, and its length. */
    public record Chord(double leadingEdgeXMm, double chordMm) {}

    /** A point of the outline: x aft of the datum, y to the right. */
    public record PlanPoint(double xMm, double yMm) {}

    public Planform {
        panels = List.copyOf(panels);
    }

    /** Empty where nothing of the surface is seen from above: upright panels only. Then it has no chord to measure by. */
    public static Optional<Planform> of(Surface surface) {
        return of(surface.mirrored(), panels(surface));
    }

    /** The surface with every panel laid flat: its true area and span. */
    static Planform unfolded(Surface surface) {
        List<Panel> flat = surface.panels().stream()
                .map(panel -> new Panel(panel.span(), panel.rootChord(), panel.tipChord(), panel.tipOffset(), 0))
                .toList();
        return of(new Surface(surface.apex(), surface.mirrored(), flat)).orElseThrow();
    }

    private static Optional<Planform> of(boolean mirrored, List<PanelPlan> panels) {
        double side = panels.stream().mapToDouble(PanelPlan::areaMm2).sum();
        if (!(side > 0)) {
            return Optional.empty();
        }
        return Optional.of(new Planform(
                mirrored,
                panels,
                mirrored ? 2 * side : side,
                weighted(panels, PanelPlan::macMm),
                weighted(panels, PanelPlan::macXMm),
                weighted(panels, PanelPlan::macYMm),
                weighted(panels, PanelPlan::macZMm)));
    }

    private static List<PanelPlan> panels(Surface surface) {
        List<PanelPlan> panels = new ArrayList<>();
        Station apex = surface.apex();
        double x = apex.x().mm();
        double y = surface.mirrored() ? Math.abs(apex.y().mm()) : apex.y().mm();
        double z = apex.z().mm();
        for (Panel panel : surface.panels()) {
            PanelPlan plan = PanelPlan.of(panel, x, y, z);
            panels.add(plan);
            x = plan.tipXMm();
            y = plan.tipYMm();
            z = plan.tipZMm();
        }
        return panels;
    }

    /** Mean over the panels, weighted by area. */
    private static double weighted(List<PanelPlan> panels, ToDoubleFunction<PanelPlan> what) {
        double sum = 0;
        double area = 0;
        for (PanelPlan panel : panels) {
            if (panel.areaMm2() > 0) {
                sum += panel.areaMm2() * what.applyAsDouble(panel);
                area += panel.areaMm2();
            }
        }
        return sum / area;
    }

    public double areaM2() {
        return areaMm2 / MM2_PER_M2;
    }

    /** Tip to tip of a mirrored surface, root to tip of a single one. */
    public double spanMm() {
        PanelPlan last = panels.get(panels.size() - 1);
        return mirrored ? 2 * last.tipYMm() : last.tipYMm() - panels.get(0).rootYMm();
    }

    /** b^2 / S. */
    public double aspectRatio() {
        return spanMm() * spanMm() / areaMm2;
    }

    /** The quarter point of the MAC, where the aerodynamic centre is taken to be. */
    public double quarterChordXMm() {
        return xMm(25);
    }

    /** Sweep of the quarter-chord line in degrees: from the tangents of the panels, weighted by their areas. */
    public double sweepDeg() {
        return Math.toDegrees(Math.atan(tanSweep(0.25)));
    }

    double tanSweep(double fraction) {
        return weighted(panels, panel -> panel.tanSweep(fraction));
    }

    /** Dihedral in degrees, weighted by the areas of the panels. */
    public double dihedralDeg() {
        return weighted(panels, PanelPlan::dihedralDeg);
    }

    /** A station in per cent of the MAC behind its leading edge: 100 (x - x_LEMAC) / MAC. */
    public double percentMac(double xMm) {
        return 100 * (xMm - macXMm) / macMm;
    }

    /** The station of a per cent of the MAC: x_LEMAC + MAC p / 100. */
    public double xMm(double percentMac) {
        return macXMm + macMm * percentMac / 100;
    }

    /** Leading edge and chord at a span station; either side of a mirrored surface, empty off its span. */
    public Optional<Chord> chordAt(double yMm) {
        double side = mirrored ? Math.abs(yMm) : yMm;
        return panels.stream().filter(panel -> panel.isAt(side)).findFirst().map(panel -> panel.chordAt(side));
    }

    /**
     * The outline of the right, or only, side from above: along the leading edge from the root out, back along the trailing
     * edge. A mirrored surface has the same with y changed in sign.
     */
    public List<PlanPoint> outline() {
        List<PlanPoint> leading = new ArrayList<>();
        List<PlanPoint> trailing = new ArrayList<>();
        for (PanelPlan panel : panels) {
            leading.add(new PlanPoint(panel.rootXMm(), panel.rootYMm()));
            leading.add(new PlanPoint(panel.tipXMm(), panel.tipYMm()));
            trailing.add(new PlanPoint(panel.rootXMm() + panel.rootChordMm(), panel.rootYMm()));
            trailing.add(new PlanPoint(panel.tipXMm() + panel.tipChordMm(), panel.tipYMm()));
        }
        Collections.reverse(trailing);
        leading.addAll(trailing);
        return leading.stream().distinct().toList();
    }
}
