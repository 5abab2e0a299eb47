package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.report.drawing.BalancePictures;
import dev.ledgerwing.report.sheet.MomentTable;
import dev.ledgerwing.report.sheet.StrapGuide;
import dev.ledgerwing.web.airframe.FindingRow;
import dev.ledgerwing.web.desk.CgFigure;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The balance page of one airframe, ready to be shown.
 *
 * @param isEmpty whether there is no line at all
 * @param isBare whether neither a wing nor limits are entered
 * @param main the main figure
 * @param planform drawn from above, {@code strip} the masses along the stations; both ready markup of our own
 * @param moreFindings how many findings are left out, none of them worse than those shown
 */
record BalanceView(
        boolean isEmpty,
        boolean isBare,
        String main,
        String planform,
        String strip,
        List<BalanceFacts.Fact> facts,
        CorrectionsView corrections,
        List<FindingRow> findings,
        int moreFindings,
        List<LoadCaseRow> cases,
        MomentTable moments,
        @Nullable InertiaView inertia,
        List<StrapGuide> straps) {

    static BalanceView of(BuildReview review) {
        List<FindingRow> findings = FindingRow.of(review, Budget.BALANCE);
        Geometry geometry = review.build().geometry();
        return new BalanceView(
                review.build().lines().isEmpty(),
                geometry.wing() == null && geometry.balanceLimits() == null,
                CgFigure.of(review.figures()).cg(review.units()),
                BalancePictures.planform(review, review.units()).html(),
                BalancePictures.strip(review, review.units()).html(),
                BalanceFacts.of(review),
                CorrectionsView.of(review),
                findings,
                review.findings(Budget.BALANCE).size() - findings.size(),
                LoadCaseRow.of(review),
                MomentTable.of(review.balance(), review.units()),
                review.balance().design().inertia().map(InertiaView::of).orElse(null),
                StrapGuide.of(review.balance(), review.units()));
    }
}
