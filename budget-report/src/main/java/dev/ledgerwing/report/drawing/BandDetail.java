package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.BalanceView.BandView;
import dev.ledgerwing.report.drawing.BalanceView.CaseView;
import dev.ledgerwing.report.drawing.BalanceView.CgView;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The band enlarged, nose to the left: a row for each load case, its name and figures beside the plot or above it, never in it.
 */
final class BandDetail {

    private static final double NAMES = 222;
    private static final double FIGURES = 198;

    private final Board board;
    private final Plate plate;
    private final double lines;
    private final Scale x;
    private final double left;
    private final double right;
    private final BandLimits limits;

    BandDetail(Board board) {
        this.board = board;
        this.plate = board.plate();
        this.lines = board.lines();
        this.left = board.isWide() ? NAMES : Board.EDGE + 2;
        this.right = board.layout().width() - (board.isWide() ? FIGURES : Board.EDGE + 2);
        double room = board.isWide() ? 0 : BandLimits.room(plate) / (right - left);
        BandWindow window = BandWindow.of(board.view(), board.before(), room);
        this.x = new Scale(left, window.lowMm(), (right - left) / (window.highMm() - window.lowMm()));
        this.limits = new BandLimits(board, x);
    }

    /** Length on the drawing of each millimetre. */
    double perMm() {
        return x.perMm();
    }

    /** Draws from {@code top} on and gives the place below. */
    double draw(double top) {
        double plot = top + limits.height();
        double bottom = plot + board.view().cases().size() * height(2) + estimates() * height(1);
        limits.labels(top, plot);
        plate.line(new Spot(left, plot), new Spot(right, plot), Pen.RULE);
        if (board.isWide()) {
            limits.band(plot, bottom);
        }
        rows(plot);
        BandRulers rulers = new BandRulers(board, x, left, right);
        return new MarkKey(board).draw(rulers.percents(rulers.lengths(bottom)));
    }

    private int estimates() {
        return (board.view().neutralPointXMm() == null ? 0 : 1) + (board.view().bandFromNeutral() == null ? 0 : 1);
    }

    /** Of a row with one or two lines of figures. */
    private double height(int figures) {
        return board.isWide() ? 2 * lines + 4 : (1 + 2 * figures) * lines + 2 * Board.GAP;
    }

    private void rows(double plot) {
        double at = plot;
        for (CaseView one : board.view().cases()) {
            loadCase(one, at);
            at += height(2);
        }
        Double neutral = board.view().neutralPointXMm();
        if (neutral != null) {
            neutralPoint("Neutral point, estimate", neutral, at);
            at += height(1);
        }
        BandView interval = board.view().bandFromNeutral();
        if (interval != null) {
            interval("Band by the wanted static margin, estimate", interval, at);
        }
    }

    private void loadCase(CaseView one, double top) {
        CaseView old = board.before() == null ? null : board.before().loadCase(one.code());
        double plotTop = row(name(one), 2, top);
        String told = told("basic", one.basic()) + "; " + told("predicted", one.predicted());
        plate.open("case " + one.verdict(), one.name() + ": " + told);
        new CaseMarks(plate, x).loadCase(one, old, plotTop, lines);
        plate.close();
        figures(figures("basic ", one, old, CaseView::basic), top, 0);
        figures(figures("predicted ", one, old, CaseView::predicted), top, 1);
    }

    private static String name(CaseView one) {
        String ground = one.flight() ? "" : " (ground)";
        return one.name() + ground + (one.isKnown() ? "" : ", " + one.unplaced() + " not placed");
    }

    private String told(String mass, @Nullable CgView cg) {
        return mass + " " + (cg == null ? "not known" : board.place(cg.xMm()) + board.plusMinus(cg));
    }

    private String figures(
            String mass, CaseView one, @Nullable CaseView old, Function<CaseView, @Nullable CgView> which) {
        String named = board.isWide() ? "" : mass;
        CgView now = which.apply(one);
        if (now == null) {
            return named + "not known";
        }
        CgView then = old == null ? null : which.apply(old);
        String after = board.share(now.xMm());
        String before = then == null ? after : board.shareBefore(then.xMm());
        return named + (before.equals(after) ? board.place(now.xMm()) + board.plusMinus(now) : before + " → " + after);
    }

    private void neutralPoint(String name, double xMm, double top) {
        double plotTop = row(name, 1, top);
        plate.open("neutral-point", name + ": " + board.place(xMm));
        new CaseMarks(plate, x).neutralPoint(xMm, middle(plotTop));
        plate.close();
        figures(board.place(xMm), top + beside(), 0);
    }

    private void interval(String name, BandView interval, double top) {
        double plotTop = row(name, 1, top);
        String text = board.share(interval.forwardXMm()) + " to " + board.share(interval.aftXMm());
        plate.open("from-neutral", name + ": " + text);
        double at = middle(plotTop);
        new CaseMarks(plate, x).interval(interval, new Stroke(new Spot(left, at), new Spot(right, at), Pen.LEADER));
        plate.close();
        figures(text, top + beside(), 0);
    }

    private double middle(double plotTop) {
        return plotTop + (board.isWide() ? lines : 0.5 * lines);
    }

    /** A single line of figures stands halfway down its row where it stands beside the plot. */
    private double beside() {
        return board.isWide() ? lines / 2 + 1 : 0;
    }

    /** Draws the name of a row and what lies under its marks, and gives the top of its plot. */
    private double row(String name, int figures, double top) {
        double plotTop = board.isWide() ? top + 2 : top + height(figures) - figures * lines - Board.GAP;
        if (board.isWide()) {
            plate.line(new Spot(Board.EDGE, top), new Spot(plate.width() - Board.EDGE, top), Pen.RULE);
        } else {
            limits.band(plotTop, plotTop + figures * lines);
        }
        name(name, top);
        return plotTop;
    }

    private void name(String name, double top) {
        double room = (board.isWide() ? left - 2 * Board.GAP : plate.width() - Board.EDGE) - Board.EDGE;
        List<String> text = plate.letters().wrapped(name, room, board.isWide() ? 2 : 1);
        double besideFirst = text.size() == 1 ? top + 1.5 * lines : top + lines - 1;
        double first = board.isWide() ? besideFirst : top + lines - 2;
        for (int line = 0; line < text.size(); line++) {
            plate.label(new Spot(Board.EDGE, first + line * lines), Anchor.START, text.get(line));
        }
    }

    /** Figures of a row: line 0 or 1 beside the plot, or above it. */
    private void figures(String text, double top, int line) {
        if (board.isWide()) {
            plate.label(new Spot(right + 2 * Board.GAP, top + lines - 1 + line * lines), Anchor.START, text);
        } else {
            plate.small(new Spot(Board.EDGE, top + 2 * lines - 3 + line * lines), Anchor.START, text);
        }
    }
}
