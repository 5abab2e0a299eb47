package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.DayView.Moment;
import dev.ledgerwing.report.drawing.DayView.SunEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Harvest and consumption through 24 hours, and below that how full the packs are. Curves are told apart by the kind of line. An SVG
 * element to stand in a page.
 */
public final class DayChart {

    private static final double SAMPLE = 26;
    private static final double HOURS = 24;
    private static final double FULL = 100;

    private final DayView view;
    private final Plate plate;
    private final Layout layout;
    private final double left;
    private final double right;
    private final double step;

    private DayChart(DayView view, Layout layout) {
        this.view = view;
        this.layout = layout;
        this.plate = new Plate(layout);
        this.left = Board.EDGE + plate.smallLetters().width("100\u2009%") + 6;
        this.right = layout.width() - Board.EDGE - 10;
        this.step = 1.3 * layout.letters();
    }

    public static String svg(DayView view, Layout layout) {
        return draw(view, layout).svg();
    }

    static Drawn draw(DayView view, Layout layout) {
        return new DayChart(view, layout).draw();
    }

    private Drawn draw() {
        double at = Board.EDGE / 2 + step;
        plate.label(new Spot(Board.EDGE, at), Anchor.START, plate.letters().cut(view.told(), right - Board.EDGE));
        at = powers(at + 4);
        at = charge(at + 6);
        for (String note : view.notes()) {
            for (String line : plate.smallLetters().wrapped(note, layout.width() - 2 * Board.EDGE, 8)) {
                at += step;
                plate.small(new Spot(Board.EDGE, at), Anchor.START, line);
            }
        }
        return plate.finish("day", view.airframe() + ": " + view.told(), at + Board.EDGE);
    }

    private double powers(double top) {
        List<Sample> samples = new ArrayList<>();
        samples.add(new Sample("harvest", Pen.CURVE));
        samples.add(new Sample("consumption", Pen.CURVE_DASHED));
        if (!view.suns().isEmpty()) {
            String words = view.suns().stream().map(SunEvent::words).collect(Collectors.joining(", "));
            samples.add(new Sample(words, Pen.CURVE_DOTTED));
        }
        double base = key(top, samples);
        double most = Math.max(1, view.mostW());
        Ticks ticks = Ticks.between(0, most, most / 4);
        Panel panel = new Panel(base + 8, base + 8 + (layout.isWide() ? 150 : 120), most);
        marks(panel, ticks, "W");
        suns(panel);
        curve(panel, Moment::harvestW, Pen.CURVE);
        curve(panel, Moment::consumptionW, Pen.CURVE_DASHED);
        return hours(panel);
    }

    private double charge(double top) {
        List<Sample> samples = new ArrayList<>(List.of(new Sample("charge of the packs", Pen.CURVE)));
        Double keep = view.keepPercent();
        if (keep != null) {
            samples.add(new Sample("must be kept: " + Figures.number(keep, 0) + "\u2009%", Pen.FLOOR));
        }
        double base = key(top, samples);
        Panel panel = new Panel(base + 8, base + 8 + (layout.isWide() ? 110 : 100), FULL);
        marks(panel, Ticks.between(0, FULL, FULL / 4), "%");
        suns(panel);
        if (keep != null) {
            plate.line(new Spot(left, panel.y(keep)), new Spot(right, panel.y(keep)), Pen.FLOOR);
        }
        curve(panel, Moment::chargePercent, Pen.CURVE);
        return hours(panel);
    }

    /** A piece of a line and what it stands for. */
    private record Sample(String words, Pen pen) {}

    /** A field of curves: from the top down to nothing. */
    private record Panel(double top, double bottom, double most) {

        double y(double value) {
            return bottom - (bottom - top) * value / most;
        }
    }

    /** What the lines mean, in as many rows as it takes; gives the last baseline. */
    private double key(double top, List<Sample> samples) {
        double base = top + step;
        double at = Board.EDGE;
        for (Sample sample : samples) {
            double needed = SAMPLE + 6 + plate.smallLetters().width(sample.words());
            if (at > Board.EDGE && at + needed > layout.width() - Board.EDGE) {
                at = Board.EDGE;
                base += step;
            }
            plate.line(new Spot(at, base - 4), new Spot(at + SAMPLE, base - 4), sample.pen());
            plate.small(new Spot(at + SAMPLE + 6, base), Anchor.START, sample.words());
            at += needed + 16;
        }
        return base;
    }

    private double x(double hour) {
        return left + (right - left) * (hour - view.firstHour()) / HOURS;
    }

    private void marks(Panel panel, Ticks ticks, String unit) {
        for (double mark : ticks.marks()) {
            double y = panel.y(mark);
            plate.line(new Spot(left, y), new Spot(right, y), Pen.RULE);
            String words = Figures.number(mark, ticks.decimals()) + "\u2009" + unit;
            plate.small(new Spot(left - 4, y + 4), Anchor.END, words);
        }
        plate.line(new Spot(left, panel.bottom()), new Spot(right, panel.bottom()), Pen.RULER);
    }

    /** The clock below a panel; gives the place below. */
    private double hours(Panel panel) {
        int every = layout.isWide() ? 3 : 6;
        double first = Math.ceil(view.firstHour() / every) * every;
        double base = panel.bottom() + 5 + step - 3;
        for (double hour = first; hour <= view.firstHour() + HOURS; hour += every) {
            double x = x(hour);
            plate.line(new Spot(x, panel.bottom()), new Spot(x, panel.bottom() + 5), Pen.RULER);
            plate.small(new Spot(x, base), Anchor.MIDDLE, Figures.number(hour % HOURS, 0) + "\u2009h");
        }
        return base;
    }

    private void suns(Panel panel) {
        for (SunEvent sun : view.suns()) {
            plate.line(new Spot(x(sun.hour()), panel.top()), new Spot(x(sun.hour()), panel.bottom()), Pen.CURVE_DOTTED);
        }
    }

    /** Broken where it is not known. */
    private void curve(Panel panel, Function<Moment, @Nullable Double> value, Pen pen) {
        List<Spot> piece = new ArrayList<>();
        for (Moment moment : view.moments()) {
            Double there = value.apply(moment);
            if (there == null) {
                finish(piece, pen);
            } else {
                piece.add(new Spot(x(moment.hour()), panel.y(there)));
            }
        }
        finish(piece, pen);
    }

    private void finish(List<Spot> piece, Pen pen) {
        if (piece.size() > 1) {
            plate.curve(piece, pen);
        }
        piece.clear();
    }
}
