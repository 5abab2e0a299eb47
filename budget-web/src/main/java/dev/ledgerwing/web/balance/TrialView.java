package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.balance.correction.Correction;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.review.CorrectionReview;
import dev.ledgerwing.core.review.ImpactPart;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.BalancePictures;
import java.util.Arrays;
import java.util.List;

/**
 * A correction looked at before it is applied.
 *
 * @param picture marks of before and of after in one drawing; ready markup of our own
 * @param impact what the budgets would say
 */
record TrialView(
        String key,
        String sentence,
        String picture,
        List<ImpactPart> impact,
        List<BudgetChange> budgets,
        List<LoadCaseRow> before,
        List<LoadCaseRow> after,
        List<String> declareAgain) {

    /** How a budget stands now and would stand. */
    record BudgetChange(String title, Verdict before, Verdict after) {}

    static TrialView of(Correction offer, BuildReview before) {
        CorrectionReview trial = CorrectionReview.of(before, offer);
        BuildReview after = trial.after();
        return new TrialView(
                offer.key(),
                offer.sentence(before.units()),
                BalancePictures.planform(before, after, before.units()).html(),
                trial.delta().impact(),
                Arrays.stream(Budget.values())
                        .map(budget -> new BudgetChange(budget.title(), before.verdict(budget), after.verdict(budget)))
                        .toList(),
                LoadCaseRow.of(before),
                LoadCaseRow.of(after),
                offer.declareAgain());
    }
}
