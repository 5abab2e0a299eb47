package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.BalanceView.BandView;
import dev.ledgerwing.report.drawing.BalanceView.CaseView;
import dev.ledgerwing.report.drawing.BalanceView.CgView;
import dev.ledgerwing.report.drawing.BalanceView.Chord;
import dev.ledgerwing.report.drawing.BalanceView.PlanPanel;
import dev.ledgerwing.report.drawing.BalanceView.PlanPoint;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The airframe from above, nose up, one scale for both axes. Labels stand where nothing is drawn: the stations left of the airframe,
 * the chord ahead of the wing, the rest behind it.
 */
final class PlanSketch {

    private static final double EDGE = 8;
    private static final double TICK = 5;
    private static final double GAP = 6;
    private static final double LARGEST_PART = 9;
    private static final double CG_RADIUS = 6;

    private final Plate plate;
    private final BalanceView view;
    private final @Nullable BalanceView before;
    private final Figures units;
    private final Layout layout;
    private final double lines;
    private final double lowMm;
    private final double highMm;
    private final double halfSpanMm;
    private final double gutter;
    private final double perMm;
    private final double centre;

    PlanSketch(Plate plate, BalanceView view, @Nullable BalanceView before, Figures units, Layout layout) {
        this.plate = plate;
        this.view = view;
        this.before = before;
        this.units = units;
        this.layout = layout;
        this.lines = 1.3 * layout.letters();
        this.lowMm = Math.min(
                0,
                reach().mapToDouble(shown -> shown.reachXMm().min().orElse(0))
                        .min()
                        .orElse(0));
        this.highMm = reach().mapToDouble(shown -> shown.reachXMm().max().orElse(0))
                .max()
                .orElse(0);
        this.halfSpanMm = reach().flatMap(BalanceView::corners)
                .mapToDouble(corner -> Math.abs(corner.yMm()))
                .max()
                .orElse(1);
        this.gutter = EDGE + plate.smallLetters().width("−0000") + TICK + 2 * GAP;
        double room = layout.width() - gutter - EDGE;
        this.perMm = Math.min(room / (2 * halfSpanMm), layout.mostHeight() / Math.max(1, highMm - lowMm));
        this.centre = gutter + room / 2;
    }

    private Stream<BalanceView> reach() {
        return Stream.of(view, before).flatMap(Stream::ofNullable);
    }

    /** Draws from {@code top} on and gives the place below. */
    double draw(double top) {
        Chord chord = view.chord();
        double above = chord == null ? 0 : roomAhead(chord);
        Scale x = new Scale(top + EDGE + above, lowMm, perMm);
        ruler(x);
        surfaces(x);
        centreLine(x);
        parts(x);
        if (chord != null) {
            chord(x, chord);
        }
        band(x);
        double end = labels(x);
        cases(x);
        return Math.max(x.at(highMm), end) + EDGE;
    }

    private Spot spot(Scale x, PlanPoint point) {
        return new Spot(centre + point.yMm() * perMm, x.at(point.xMm()));
    }

    /** How far the label of the chord reaches up over the foremost station. */
    private double roomAhead(Chord chord) {
        double needed = chordLabelHeight() + GAP;
        double free = (foremostMm(chord.yMm()) - lowMm) * perMm;
        return Math.max(0, needed - free);
    }

    private double chordLabelHeight() {
        return (layout.isWide() ? 2 : 1) * lines + 2 * GAP;
    }

    /** The foremost station drawn where a label over the span station {@code yMm} would stand. */
    private double foremostMm(double yMm) {
        double half = plate.letters().width("000 mm from the centre line") / 2 / perMm;
        return reach().flatMap(BalanceView::corners)
                .filter(corner -> corner.yMm() > Math.max(0, yMm - half) - 1)
                .mapToDouble(PlanPoint::xMm)
                .min()
                .orElse(lowMm);
    }

    private void ruler(Scale x) {
        double line = gutter - GAP - TICK;
        double from = x.at(lowMm);
        double to = x.at(highMm);
        Ticks ticks = x.ticks(from, to, 2 * layout.letters(), units);
        plate.line(new Spot(line + TICK, from), new Spot(line + TICK, to), Pen.RULER);
        for (double mark : ticks.marks()) {
            double at = x.atMark(mark, units);
            plate.line(new Spot(line, at), new Spot(line + TICK, at), Pen.RULER);
            plate.small(
                    new Spot(line - 3, at + 0.33 * layout.letters()),
                    Anchor.END,
                    Figures.number(mark, ticks.decimals()));
        }
    }

    private void surfaces(Scale x) {
        if (before != null) {
            outlines(x, before.wing(), Pen.PANEL_BEFORE, view.wing());
            outlines(x, before.tail(), Pen.PANEL_BEFORE, view.tail());
        }
        surface(x, "wing", "Wing", view.wing());
        surface(x, "tail", "Tail", view.tail());
    }

    private void outlines(Scale x, List<PlanPanel> panels, Pen pen, List<PlanPanel> now) {
        if (!panels.equals(now)) {
            panels.forEach(panel -> plate.polygon(spots(x, panel), pen));
        }
    }

    private void surface(Scale x, String cssClass, String name, List<PlanPanel> panels) {
        if (panels.isEmpty()) {
            return;
        }
        DoubleSummaryStatistics across = panels.stream()
                .flatMap(panel -> panel.corners().stream())
                .mapToDouble(PlanPoint::yMm)
                .summaryStatistics();
        plate.open(cssClass, name + ", " + Scale.length(across.getMax() - across.getMin(), units) + " from tip to tip");
        panels.forEach(panel -> panel(x, panel));
        plate.close();
    }

    /** Joints between panels are drawn thin, and none where two sides meet on the centre line. */
    private void panel(Scale x, PlanPanel panel) {
        List<Spot> corners = spots(x, panel);
        plate.fill(corners, Pen.SURFACE);
        for (int corner = 0; corner < corners.size(); corner++) {
            int next = (corner + 1) % corners.size();
            PlanPoint from = panel.corners().get(corner);
            PlanPoint to = panel.corners().get(next);
            if (from.yMm() != to.yMm()) {
                plate.line(corners.get(corner), corners.get(next), Pen.OUTLINE);
            } else if (from.yMm() != 0) {
                plate.line(corners.get(corner), corners.get(next), isTip(from.yMm()) ? Pen.OUTLINE : Pen.RULE);
            }
        }
    }

    private boolean isTip(double yMm) {
        return Stream.of(view.wing(), view.tail())
                .anyMatch(panels -> panels.stream()
                                .flatMap(panel -> panel.corners().stream())
                                .mapToDouble(corner -> Math.abs(corner.yMm()))
                                .max()
                                .orElse(0)
                        == Math.abs(yMm));
    }

    private List<Spot> spots(Scale x, PlanPanel panel) {
        return panel.corners().stream().map(corner -> spot(x, corner)).toList();
    }

    /** From the foremost to the aftmost part: nobody entered a hull. */
    private void centreLine(Scale x) {
        double from = view.placed().mapToDouble(PartMark::xMmOrZero).min().orElse(lowMm);
        double to = view.placed().mapToDouble(PartMark::xMmOrZero).max().orElse(highMm);
        plate.line(new Spot(centre, x.at(from)), new Spot(centre, x.at(to)), Pen.CENTRE);
    }

    private void parts(Scale x) {
        double heaviest = view.placed().mapToDouble(PartMark::gramsOrZero).max().orElse(1);
        plate.open("plan-parts");
        view.placed().filter(part -> part.gramsOrZero() > 0).forEach(part -> {
            Double mirrored = part.mirroredAtYMm();
            double share = part.gramsOrZero() / heaviest / (mirrored == null ? 1 : 2);
            double radius = Math.max(0.8, LARGEST_PART * Math.sqrt(share));
            for (double yMm : mirrored == null ? new double[] {part.yMmOrZero()} : new double[] {-mirrored, mirrored}) {
                plate.circle(spot(x, new PlanPoint(part.xMmOrZero(), yMm)), radius, Pen.PLAN_PART);
            }
        });
        plate.close();
    }

    private void chord(Scale x, Chord chord) {
        String name = "MAC " + Scale.length(chord.lengthMm(), units);
        String from = "from " + Scale.length(chord.leadingEdgeXMm(), units);
        String where = Scale.length(chord.yMm(), units) + " from the centre line";
        plate.open("chord", "Mean aerodynamic chord, " + name.substring(4) + " long, " + from + ", " + where);
        for (double side : chord.mirrored() ? new double[] {-1, 1} : new double[] {1}) {
            plate.line(
                    spot(x, new PlanPoint(chord.leadingEdgeXMm(), side * chord.yMm())),
                    spot(x, new PlanPoint(chord.leadingEdgeXMm() + chord.lengthMm(), side * chord.yMm())),
                    Pen.CHORD);
        }
        Spot edge = spot(x, new PlanPoint(chord.leadingEdgeXMm(), chord.yMm()));
        double bottom = x.at(foremostMm(chord.yMm())) - 2 * GAP;
        plate.line(edge, new Spot(edge.x(), bottom + 2), Pen.LEADER);
        String first = layout.isWide() ? name + ", " + from : name;
        double half = Math.max(
                        plate.letters().width(first),
                        layout.isWide() ? plate.letters().width(where) : 0)
                / 2;
        double middle = Math.min(Math.max(edge.x(), centre + GAP + half), layout.width() - EDGE - half);
        if (layout.isWide()) {
            plate.label(new Spot(middle, bottom - 4 - lines), Anchor.MIDDLE, first);
            plate.label(new Spot(middle, bottom - 4), Anchor.MIDDLE, where);
        } else {
            plate.label(new Spot(middle, bottom - 4), Anchor.MIDDLE, first);
        }
        plate.close();
    }

    /** The band reaches from chord to chord, or a little to each side without a wing. */
    private double bandHalfWidth() {
        Chord chord = view.chord();
        return (chord == null ? halfSpanMm / 3 : chord.yMm()) * perMm;
    }

    private void band(Scale x) {
        BandView old = before == null ? null : before.band();
        BandView band = view.band();
        double half = bandHalfWidth();
        if (old != null && !old.equals(band)) {
            edge(x.at(old.forwardXMm()), half, Pen.EDGE_BEFORE);
            edge(x.at(old.aftXMm()), half, Pen.EDGE_BEFORE);
        }
        if (band == null) {
            return;
        }
        Box box = new Box(centre - half, x.at(band.forwardXMm()), centre + half, x.at(band.aftXMm()));
        plate.open("band", "Allowed band, " + limit(band.forwardXMm()) + " to " + limit(band.aftXMm()));
        plate.area(box, Pen.BAND);
        plate.hatch(box, 5);
        edge(box.top(), half, Pen.EDGE);
        edge(box.bottom(), half, Pen.EDGE);
        plate.close();
    }

    private void edge(double at, double half, Pen pen) {
        plate.line(new Spot(centre - half, at), new Spot(centre + half, at), pen);
    }

    /** In per cent of the chord where there is one: its station stands in the part below. */
    private String atOf(double xMm) {
        Chord chord = view.chord();
        return chord == null ? Scale.length(xMm, units) : Scale.percent(chord.percent(xMm)) + " MAC";
    }

    private static String estimate(BandView band) {
        return band.estimated() ? ", estimate" : "";
    }

    private String limit(double xMm) {
        Chord chord = view.chord();
        return (chord == null ? "" : Scale.percent(chord.percent(xMm)) + " MAC, ") + Scale.length(xMm, units);
    }

    /** A label behind the wing, led to from {@code xMm} at a place across. */
    private record Led(String text, double xMm, boolean isNeutralPoint) {}

    /** On the right, behind everything there; each leader ends above the labels of those left of it. */
    private double labels(Scale x) {
        List<Led> led = new ArrayList<>();
        BandView band = view.band();
        if (band != null) {
            led.add(new Led("forward limit " + limit(band.forwardXMm()) + estimate(band), band.forwardXMm(), false));
            led.add(new Led("aft limit " + limit(band.aftXMm()) + estimate(band), band.aftXMm(), false));
        }
        Double neutral = view.neutralPointXMm();
        if (neutral != null) {
            led.add(new Led("neutral point " + atOf(neutral) + ", estimate", neutral, true));
        }
        if (!layout.isWide()) {
            double across = centre + 0.3 * bandHalfWidth();
            led.stream()
                    .filter(Led::isNeutralPoint)
                    .forEach(one -> neutralPoint(new Spot(across, x.at(one.xMm())), one.text()));
            return 0;
        }
        double longest = led.stream()
                .mapToDouble(one -> plate.letters().width(one.text()))
                .max()
                .orElse(0);
        double first = Math.max(
                centre + 2 * GAP,
                Math.min(centre + 0.3 * bandHalfWidth(), layout.width() - EDGE - longest - led.size() * 2 * GAP));
        double height = led.size() * lines;
        double top = x.at(aftmostMm(first - 2, first + longest + led.size() * 2 * GAP, height)) + 1.5 * GAP + lines;
        for (int row = 0; row < led.size(); row++) {
            double down = top + (led.size() - 1 - row) * lines;
            led(led.get(row), new Spot(first + row * 2 * GAP, x.at(led.get(row).xMm())), down);
        }
        return top + height;
    }

    private void led(Led led, Spot from, double down) {
        Spot knee = new Spot(from.x(), down - 0.3 * layout.letters());
        plate.line(from, knee, Pen.LEADER);
        plate.line(knee, knee.plus(5, 0), Pen.LEADER);
        if (led.isNeutralPoint()) {
            neutralPoint(from, led.text());
        } else {
            plate.circle(from, 1.7, Pen.ARROW);
        }
        plate.label(new Spot(from.x() + 8, down), Anchor.START, led.text());
    }

    private void neutralPoint(Spot at, String name) {
        plate.open("neutral-point", name);
        diamond(plate, at, 4.5, Pen.NEUTRAL);
        plate.close();
    }

    /** Behind the wing between two places across; behind the tail too where that would be in the way. */
    private double aftmostMm(double from, double to, double height) {
        double behindWing = aftmostMm(view.wing(), from, to);
        double tailFront = view.tail().stream()
                .flatMap(panel -> panel.corners().stream())
                .mapToDouble(PlanPoint::xMm)
                .min()
                .orElse(Double.MAX_VALUE);
        boolean fits = tailFront < behindWing - 1 || behindWing + (height + 5 * GAP) / perMm < tailFront;
        return fits && tailFront > behindWing ? behindWing : Math.max(behindWing, aftmostMm(view.tail(), from, to));
    }

    private double aftmostMm(List<PlanPanel> panels, double from, double to) {
        double fromMm = (from - centre) / perMm;
        double toMm = (to - centre) / perMm;
        return panels.stream()
                .filter(panel -> panel.corners().stream().anyMatch(corner -> corner.yMm() > fromMm)
                        && panel.corners().stream().anyMatch(corner -> corner.yMm() < toMm))
                .flatMap(panel -> panel.corners().stream())
                .mapToDouble(PlanPoint::xMm)
                .max()
                .orElse(lowMm);
    }

    static void diamond(Plate plate, Spot at, double half, Pen pen) {
        plate.polygon(List.of(at.plus(0, -half), at.plus(half, 0), at.plus(0, half), at.plus(-half, 0)), pen);
    }

    /** The design case last, so that it lies on top. */
    private void cases(Scale x) {
        List<CaseView> others =
                view.cases().stream().filter(one -> !one.design()).toList();
        others.forEach(one -> cg(x, one));
        view.cases().stream().filter(CaseView::design).forEach(one -> cg(x, one));
    }

    private void cg(Scale x, CaseView one) {
        CgView cg = one.basic();
        if (cg == null) {
            return;
        }
        Spot at = spot(x, new PlanPoint(cg.xMm(), cg.yMm()));
        plate.open("cg " + one.verdict(), "CG, " + one.name() + ": " + limit(cg.xMm()));
        plate.line(new Spot(at.x(), x.at(cg.lowMm())), new Spot(at.x(), x.at(cg.highMm())), Pen.BAR);
        if (one.design()) {
            plate.quartered(at, CG_RADIUS);
        } else {
            plate.circle(at, 2, one.flight() && one.isKnown() ? Pen.BASIC : Pen.PREDICTED);
        }
        plate.close();
    }
}
