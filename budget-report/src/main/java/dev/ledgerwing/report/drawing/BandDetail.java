package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.report.drawing.BalanceView.BandView;
import dev.ledgerwing.report.drawing.BalanceView.CaseView;
import dev.ledgerwing.report.drawing.BalanceView.CgView;
import dev.ledgerwing.report.drawing.BalanceView.Chord;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The band enlarged, nose to the left: a row for each load case, its name and figures beside the plot or above it, never in it.
 */
final class BandDetail {

    private static final double EDGE = 8;
    private static final double GAP = 6;
    private static final double TICK = 5;
    private static final double MARK = 4.6;
    private static final double CAP = 3.5;

    private final Plate plate;
    private final BalanceView view;
    private final @Nullable BalanceView before;
    private final Figures units;
    private final boolean wide;
    private final double lines;
    private final Scale x;
    private final double left;
    private final double right;

    BandDetail(Plate plate, BalanceView view, @Nullable BalanceView before, Figures units, Layout layout) {
        this.plate = plate;
        this.view = view;
        this.before = before;
        this.units = units;
        this.wide = layout.isWide();
        this.lines = 1.3 * layout.letters();
        this.left = wide ? 222 : EDGE + 2;
        this.right = layout.width() - (wide ? 198 : EDGE + 2);
        BandWindow window = BandWindow.of(view, before, wide ? 0 : labelWidth() / (right - left));
        this.x = new Scale(left, window.lowMm(), (right - left) / (window.highMm() - window.lowMm()));
    }

    /** Pixels for each millimetre. */
    double perMm() {
        return x.perMm();
    }

    /** Draws from {@code top} on and gives the place below. */
    double draw(double top) {
        double plot = top + limitsHeight();
        List<Row> rows = rows();
        double bottom = plot + rows.stream().mapToDouble(row -> height(row)).sum();
        limits(top, plot);
        plate.line(new Spot(left, plot), new Spot(right, plot), Pen.RULE);
        if (wide) {
            bandAcross(plot, bottom);
        }
        double at = plot;
        for (Row row : rows) {
            row(row, at);
            at += height(row);
        }
        return key(percentRuler(lengthRuler(bottom)));
    }

    private double labelWidth() {
        return plate.letters().width("000.0 % MAC") + 5;
    }

    // Rows

    /** One row: a load case, or where one of the two is null something else. */
    private record Row(
            String name,
            @Nullable CaseView shown,
            @Nullable BandView interval,
            @Nullable Double pointMm) {}

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>(view.cases().stream()
                .map(one -> new Row(name(one), one, null, null))
                .toList());
        if (view.neutralPointXMm() != null) {
            rows.add(new Row("Neutral point, estimate", null, null, view.neutralPointXMm()));
        }
        if (view.bandFromNeutral() != null) {
            rows.add(new Row("Band by the wanted static margin, estimate", null, view.bandFromNeutral(), null));
        }
        return rows;
    }

    private static String name(CaseView one) {
        String ground = one.flight() ? "" : " (ground)";
        return one.name() + ground + (one.isKnown() ? "" : ", " + one.unplaced() + " not placed");
    }

    private double height(Row row) {
        int figures = row.shown() == null ? 1 : 2;
        return wide ? 2 * lines + 4 : (1 + figures) * lines + plotHeight(row) + 2 * GAP;
    }

    private double plotHeight(Row row) {
        return row.shown() == null ? lines : 2 * lines;
    }

    private void row(Row row, double top) {
        double plotTop = wide ? top + 2 : top + height(row) - plotHeight(row) - GAP;
        if (wide) {
            plate.line(new Spot(EDGE, top), new Spot(plate.width() - EDGE, top), Pen.RULE);
        } else {
            bandAcross(plotTop, plotTop + plotHeight(row));
        }
        name(row, top);
        if (row.shown() != null) {
            loadCase(row.shown(), top, plotTop);
        } else if (row.interval() != null) {
            interval(row.name(), row.interval(), top, plotTop);
        } else {
            neutralPoint(Objects.requireNonNull(row.pointMm()), top, plotTop);
        }
    }

    private void name(Row row, double top) {
        if (!wide) {
            plate.label(
                    new Spot(EDGE, top + lines - 2),
                    Anchor.START,
                    plate.letters().cut(row.name(), plate.width() - 2 * EDGE));
            return;
        }
        List<String> name = plate.letters().wrapped(row.name(), left - EDGE - 2 * GAP, 2);
        double first = name.size() == 1 ? middleBaseline(top) : top + lines - 1;
        for (int line = 0; line < name.size(); line++) {
            plate.label(new Spot(EDGE, first + line * lines), Anchor.START, name.get(line));
        }
    }

    /** Baseline of a text halfway down a row beside the plot. */
    private double middleBaseline(double top) {
        return top + 1.5 * lines;
    }

    /** Figures of a row: line 0 or 1 beside the plot, or above it. */
    private void figures(String text, double top, int line) {
        if (wide) {
            plate.label(new Spot(right + 2 * GAP, top + lines - 1 + line * lines), Anchor.START, text);
        } else {
            plate.small(new Spot(EDGE, top + 2 * lines - 3 + line * lines), Anchor.START, text);
        }
    }

    private void loadCase(CaseView one, double top, double plotTop) {
        CaseView old = before == null
                ? null
                : before.cases().stream()
                        .filter(other -> other.code().equals(one.code()))
                        .findFirst()
                        .orElse(null);
        plate.open(
                "case " + one.verdict(),
                one.name() + ": " + told("basic", one.basic()) + "; " + told("predicted", one.predicted()));
        mark(
                one.basic(),
                old == null ? null : old.basic(),
                plotTop + 0.52 * lines,
                one.isKnown() ? Pen.BASIC : Pen.INCOMPLETE);
        mark(
                one.predicted(),
                old == null ? null : old.predicted(),
                plotTop + 1.5 * lines,
                one.isKnown() ? Pen.PREDICTED : Pen.INCOMPLETE);
        plate.close();
        figures(figures("basic ", one, old, CaseView::basic), top, 0);
        figures(figures("predicted ", one, old, CaseView::predicted), top, 1);
    }

    private String told(String mass, @Nullable CgView cg) {
        return mass + " " + (cg == null ? "not known" : place(cg.xMm()) + plusMinus(cg));
    }

    private String figures(
            String mass, CaseView one, @Nullable CaseView old, Function<CaseView, @Nullable CgView> which) {
        CgView now = which.apply(one);
        if (now == null) {
            return (wide ? "" : mass) + "not known";
        }
        CgView then = old == null ? null : which.apply(old);
        String before = then == null ? "" : shareBefore(then.xMm());
        String after = share(now.xMm());
        return (wide ? "" : mass)
                + (before.isEmpty() || before.equals(after)
                        ? place(now.xMm()) + plusMinus(now)
                        : before + " → " + after);
    }

    /** Of the chord as it was: a wing that moves takes its chord along. */
    private String shareBefore(double xMm) {
        Chord chord = before == null ? null : before.chord();
        return chord == null || view.chord() == null ? share(xMm) : Scale.percent(chord.percent(xMm));
    }

    private String share(double xMm) {
        Chord chord = view.chord();
        return chord == null ? Scale.length(xMm, units) : Scale.percent(chord.percent(xMm));
    }

    private String place(double xMm) {
        return view.chord() == null ? Scale.length(xMm, units) : share(xMm) + ", " + Scale.length(xMm, units);
    }

    private String plusMinus(CgView cg) {
        Double uncertainty = cg.uncertaintyMm();
        return uncertainty == null ? "" : " ± " + units.lengthNumber(Length.ofMm(2 * uncertainty));
    }

    private void mark(@Nullable CgView cg, @Nullable CgView old, double at, Pen pen) {
        if (old != null && (cg == null || old.xMm() != cg.xMm())) {
            plate.circle(new Spot(x.at(old.xMm()), at), MARK - 1, Pen.BEFORE);
        }
        if (cg == null) {
            return;
        }
        double from = x.at(cg.lowMm());
        double to = x.at(cg.highMm());
        if (old != null && old.xMm() != cg.xMm()) {
            arrow(x.at(old.xMm()), x.at(cg.xMm()), at);
        } else if (to - from > 2) {
            plate.line(new Spot(from, at), new Spot(to, at), Pen.BAR);
        }
        if (to - from > 2) {
            plate.line(new Spot(from, at - CAP), new Spot(from, at + CAP), Pen.BAR);
            plate.line(new Spot(to, at - CAP), new Spot(to, at + CAP), Pen.BAR);
        }
        plate.circle(new Spot(x.at(cg.xMm()), at), MARK, pen);
    }

    private void arrow(double from, double to, double at) {
        double way = Math.signum(to - from);
        double tip = to - way * (MARK + 1);
        if ((tip - from) * way < MARK + 6) {
            return;
        }
        plate.line(new Spot(from + way * MARK, at), new Spot(tip - way * 5, at), Pen.LEADER);
        plate.polygon(
                List.of(new Spot(tip, at), new Spot(tip - way * 7, at - 3), new Spot(tip - way * 7, at + 3)),
                Pen.ARROW);
    }

    private void interval(String name, BandView interval, double top, double plotTop) {
        double at = plotTop + (wide ? lines : 0.5 * lines);
        double from = Math.max(left, x.at(interval.forwardXMm()));
        double to = Math.min(right, x.at(interval.aftXMm()));
        String text = share(interval.forwardXMm()) + " to " + share(interval.aftXMm());
        plate.open("from-neutral", name + ": " + text);
        if (from < to) {
            plate.line(new Spot(from, at), new Spot(to, at), Pen.LEADER);
            end(x.at(interval.forwardXMm()), at);
            end(x.at(interval.aftXMm()), at);
        }
        plate.close();
        figures(text, top + (wide ? lines / 2 + 1 : 0), 0);
    }

    /** The end of an interval, where it lies in the window. */
    private void end(double place, double at) {
        if (place >= left && place <= right) {
            plate.line(new Spot(place, at - 5), new Spot(place, at + 5), Pen.EDGE);
        }
    }

    private void neutralPoint(double pointMm, double top, double plotTop) {
        double at = plotTop + (wide ? lines : 0.5 * lines);
        plate.open("neutral-point", "Neutral point, estimate: " + place(pointMm));
        PlanSketch.diamond(plate, new Spot(x.at(pointMm), at), 6, Pen.NEUTRAL);
        plate.close();
        figures(place(pointMm), top + (wide ? lines / 2 + 1 : 0), 0);
    }

    // Band and rulers

    private void bandAcross(double top, double bottom) {
        BandView old = before == null ? null : before.band();
        BandView band = view.band();
        if (old != null && !old.equals(band)) {
            upright(x.at(old.forwardXMm()), top, bottom, Pen.EDGE_BEFORE);
            upright(x.at(old.aftXMm()), top, bottom, Pen.EDGE_BEFORE);
        }
        if (band != null) {
            Box box = new Box(x.at(band.forwardXMm()), top, x.at(band.aftXMm()), bottom);
            plate.open("band");
            plate.area(box, Pen.BAND);
            plate.hatch(box, 9);
            upright(box.left(), top, bottom, Pen.EDGE);
            upright(box.right(), top, bottom, Pen.EDGE);
            plate.close();
        }
    }

    private void upright(double at, double top, double bottom, Pen pen) {
        plate.line(new Spot(at, top), new Spot(at, bottom), pen);
    }

    private double limitsHeight() {
        BandView band = view.band();
        return band == null ? GAP : limitLines("", 0, band).size() * lines + GAP;
    }

    /** What the limits are, outward of their edges and so clear of both. */
    private void limits(double top, double plot) {
        BandView band = view.band();
        if (band != null) {
            limit(
                    limitLines(wide ? "forward limit" : "forward", band.forwardXMm(), band),
                    band.forwardXMm(),
                    top,
                    plot);
            limit(limitLines(wide ? "aft limit" : "aft", band.aftXMm(), band), band.aftXMm(), top, plot);
        }
    }

    private List<String> limitLines(String name, double xMm, BandView band) {
        Chord chord = view.chord();
        return Stream.of(
                        name,
                        band.estimated() ? "estimate" : null,
                        chord == null ? null : Scale.percent(chord.percent(xMm)) + " MAC",
                        Scale.length(xMm, units))
                .flatMap(Stream::ofNullable)
                .toList();
    }

    private void limit(List<String> text, double xMm, double top, double plot) {
        boolean forward = xMm == Objects.requireNonNull(view.band()).forwardXMm();
        double across = x.at(xMm) + (forward ? -5 : 5);
        for (int line = 0; line < text.size(); line++) {
            Spot at = new Spot(across, top + (line + 1) * lines - 1);
            plate.label(at, forward ? Anchor.END : Anchor.START, text.get(line));
        }
        upright(x.at(xMm), top + 4, plot, Pen.LEADER);
    }

    private double lengthRuler(double top) {
        Ticks ticks = x.ticks(left, right, 46, units);
        plate.line(new Spot(left, top), new Spot(right, top), Pen.RULER);
        for (double mark : ticks.marks()) {
            tick(x.atMark(mark, units), top, Figures.number(mark, ticks.decimals()));
        }
        return named(top, units.lengthUnit() + " from the datum");
    }

    private double percentRuler(double top) {
        Chord chord = view.chord();
        if (chord == null) {
            return top;
        }
        double least = 46 / x.perMm() * 100 / chord.lengthMm();
        Ticks ticks = Ticks.between(chord.percent(x.mmAt(left)), chord.percent(x.mmAt(right)), least);
        plate.line(new Spot(left, top), new Spot(right, top), Pen.RULER);
        for (double mark : ticks.marks()) {
            tick(x.at(chord.xMm(mark)), top, Figures.number(mark, ticks.decimals()));
        }
        return named(top, "% of the MAC");
    }

    private void tick(double at, double top, String text) {
        upright(at, top, top + TICK, Pen.RULER);
        double half = plate.smallLetters().width(text) / 2;
        double middle = wide ? at : Math.max(EDGE + half, Math.min(at, plate.width() - EDGE - half));
        plate.small(new Spot(middle, top + TICK + lines - 3), Anchor.MIDDLE, text);
    }

    /** What a ruler measures: beside it, or below where there is no room beside. Gives the place below. */
    private double named(double top, String name) {
        double base = top + TICK + lines - 3;
        if (wide) {
            plate.small(new Spot(right + 5 * GAP, base), Anchor.START, name);
            return base + 2 * GAP;
        }
        plate.small(new Spot(plate.width() - EDGE, base + lines - 2), Anchor.END, name);
        return base + lines + GAP;
    }

    /** What the marks mean. */
    private double key(double top) {
        double at = top + lines;
        double middle = at - 0.3 * plate.letters().size();
        double end = EDGE + MARK;
        plate.circle(new Spot(end, middle), MARK, Pen.BASIC);
        end = keyText(new Spot(end + 2 * GAP, at), "basic mass");
        plate.circle(new Spot(end, middle), MARK, Pen.PREDICTED);
        end = keyText(new Spot(end + 2 * GAP, at), "predicted mass");
        if (before != null) {
            plate.circle(new Spot(end, middle), MARK - 1, Pen.BEFORE);
            end = keyText(new Spot(end + 2 * GAP, at), "before");
        }
        if (!wide) {
            at += lines;
            middle += lines;
            end = EDGE;
        }
        plate.line(new Spot(end, middle), new Spot(end + 20, middle), Pen.BAR);
        plate.line(new Spot(end, middle - CAP), new Spot(end, middle + CAP), Pen.BAR);
        plate.line(new Spot(end + 20, middle - CAP), new Spot(end + 20, middle + CAP), Pen.BAR);
        end = keyText(new Spot(end + 26, at), "± two standard uncertainties");
        if (view.hasPlan()) {
            if (!wide) {
                at += lines;
                middle += lines;
                end = EDGE;
            }
            plate.quartered(new Spot(end + MARK, middle), MARK + 1);
            keyText(new Spot(end + MARK + 2 * GAP, at), "CG in the design load case, basic mass");
        }
        return at + 2 * GAP;
    }

    private double keyText(Spot at, String text) {
        plate.small(at, Anchor.START, text);
        return at.x() + plate.smallLetters().width(text) + 3 * GAP;
    }
}
