package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.web.airframe.FindingRow;
import java.util.List;

/**
 * The mass page of one airframe, ready to be shown.
 *
 * @param isEmpty whether there is no line at all
 * @param hasTarget whether a target is set
 * @param moreFindings how many findings are left out, none of them worse than those shown
 */
record MassView(
        boolean isEmpty,
        boolean hasTarget,
        BudgetBar bar,
        List<Term> terms,
        List<FindingRow> findings,
        int moreFindings,
        List<Breakdown> breakdowns,
        List<CaseRow> cases,
        GrowthView growth,
        ForecastView forecast,
        RulesView rules) {

    static MassView of(BuildReview review, GrowthView growth) {
        Build build = review.build();
        Figures figures = review.units();
        List<FindingRow> findings = FindingRow.of(review, Budget.MASS);
        return new MassView(
                build.lines().isEmpty(),
                build.budget().targetMass() != null,
                BudgetBar.of(review.mass(), figures),
                Statement.of(review),
                findings,
                review.findings(Budget.MASS).size() - findings.size(),
                Breakdown.of(review.mass(), figures),
                CaseRow.of(review.mass(), figures),
                growth,
                ForecastView.of(review.massForecast(), figures),
                RulesView.of(build.judgedBy(), build.airframe().stage(), figures));
    }
}
