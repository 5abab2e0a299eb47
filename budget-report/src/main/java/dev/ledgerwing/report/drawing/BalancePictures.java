package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;

/** The drawings of a reviewed build, ready to stand in a page, in the units of a member. */
public final class BalancePictures {

    private BalancePictures() {}

    /** The airframe from above, and its band enlarged with every load case. */
    public static Picture planform(BuildReview review, Figures units) {
        BalanceView view = view(review);
        return new Picture(
                PlanformDrawing.svg(view, units, Layout.WIDE), PlanformDrawing.svg(view, units, Layout.NARROW));
    }

    /** The same with what a change would do to it: marks of before, and arrows from these to where they would be. */
    public static Picture planform(BuildReview before, BuildReview after, Figures units) {
        BalanceView old = view(before);
        BalanceView changed = view(after);
        return new Picture(
                PlanformDrawing.svg(old, changed, units, Layout.WIDE),
                PlanformDrawing.svg(old, changed, units, Layout.NARROW));
    }

    /** The masses of the design load case along the fuselage. */
    public static Picture strip(BuildReview review, Figures units) {
        BalanceView view = view(review);
        return new Picture(MassStrip.svg(view, units, Layout.WIDE), MassStrip.svg(view, units, Layout.NARROW));
    }

    private static BalanceView view(BuildReview review) {
        return new BalanceViews(review.balance(), loadCase -> verdict(review, loadCase)).view();
    }

    /** What the review says of one case; nothing is said of a ground case, nor where there are no limits. */
    private static Verdict verdict(BuildReview review, LoadCase loadCase) {
        return review.findings().stream()
                .filter(finding -> finding.code().equals(BalanceFindings.CG)
                        && finding.subject().equals(loadCase.name()))
                .map(Finding::verdict)
                .reduce(Verdict::worseOf)
                .orElse(Verdict.UNKNOWN);
    }
}
