package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.function.Function;

/** The drawings of a balance statement, ready to stand in a page. */
public final class BalancePictures {

    private BalancePictures() {}

    /** The airframe from above, and its band enlarged. */
    public static Picture planform(BalanceView view, Figures units) {
        return new Picture(
                PlanformDrawing.svg(view, units, Layout.WIDE), PlanformDrawing.svg(view, units, Layout.NARROW));
    }

    /** The same with what a change would do to it. */
    public static Picture planform(BalanceView before, BalanceView after, Figures units) {
        return new Picture(
                PlanformDrawing.svg(before, after, units, Layout.WIDE),
                PlanformDrawing.svg(before, after, units, Layout.NARROW));
    }

    /** The masses of the design load case along the fuselage. */
    public static Picture strip(BalanceView view, Figures units) {
        return new Picture(MassStrip.svg(view, units, Layout.WIDE), MassStrip.svg(view, units, Layout.NARROW));
    }

    /** What the drawings show of a statement. */
    public static BalanceView view(BalanceStatement statement, Function<LoadCase, Verdict> verdicts) {
        return new BalanceViews(statement, verdicts).view();
    }
}
