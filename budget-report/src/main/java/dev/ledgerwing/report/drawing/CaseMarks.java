package dev.ledgerwing.report.drawing;

import dev.ledgerwing.report.drawing.BalanceView.BandView;
import dev.ledgerwing.report.drawing.BalanceView.CaseView;
import dev.ledgerwing.report.drawing.BalanceView.CgView;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The marks of one row of the enlarged band: what lies where along x. */
record CaseMarks(Plate plate, Scale x) {

    static final double MARK = 4.6;
    static final double CAP = 3.5;

    /** A CG that is shown at a height, and where it was before a change. */
    record Shown(@Nullable CgView now, @Nullable CgView before, double at) {}

    /** Basic mass above, predicted mass below, {@code lines} apart. */
    void loadCase(CaseView one, @Nullable CaseView old, double top, double lines) {
        draw(
                new Shown(one.basic(), old == null ? null : old.basic(), top + 0.52 * lines),
                one.isKnown() ? Pen.BASIC : Pen.INCOMPLETE);
        draw(
                new Shown(one.predicted(), old == null ? null : old.predicted(), top + 1.5 * lines),
                one.isKnown() ? Pen.PREDICTED : Pen.INCOMPLETE);
    }

    private void draw(Shown shown, Pen pen) {
        CgView cg = shown.now();
        CgView old = shown.before();
        boolean moved = old != null && (cg == null || old.xMm() != cg.xMm());
        if (old != null && moved) {
            plate.circle(new Spot(x.at(old.xMm()), shown.at()), MARK - 1, Pen.BEFORE);
        }
        if (cg == null) {
            return;
        }
        if (old != null && moved) {
            arrow(x.at(old.xMm()), x.at(cg.xMm()), shown.at());
        }
        uncertainty(cg, shown.at(), !moved);
        plate.circle(new Spot(x.at(cg.xMm()), shown.at()), MARK, pen);
    }

    /** A bar with its ends, or the ends alone where an arrow takes its place. */
    private void uncertainty(CgView cg, double at, boolean bar) {
        double from = x.at(cg.lowMm());
        double to = x.at(cg.highMm());
        if (to - from > 2) {
            if (bar) {
                plate.line(new Spot(from, at), new Spot(to, at), Pen.BAR);
            }
            upright(from, at, CAP, Pen.BAR);
            upright(to, at, CAP, Pen.BAR);
        }
    }

    private void upright(double across, double at, double half, Pen pen) {
        plate.line(new Spot(across, at - half), new Spot(across, at + half), pen);
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

    /** What of an interval lies between two places across. */
    void interval(BandView interval, Stroke within) {
        double at = within.from().y();
        double from = Math.max(within.from().x(), x.at(interval.forwardXMm()));
        double to = Math.min(within.to().x(), x.at(interval.aftXMm()));
        if (from < to) {
            plate.line(new Spot(from, at), new Spot(to, at), Pen.LEADER);
        }
        for (double xMm : new double[] {interval.forwardXMm(), interval.aftXMm()}) {
            double end = x.at(xMm);
            if (end >= within.from().x() && end <= within.to().x()) {
                upright(end, at, 5, Pen.EDGE);
            }
        }
    }

    void neutralPoint(double xMm, double at) {
        plate.diamond(new Spot(x.at(xMm), at), 6, Pen.NEUTRAL);
    }
}
