package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.review.ImpactPart;
import dev.ledgerwing.core.review.ReviewDelta;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.OutputPictures;
import dev.ledgerwing.web.airframe.FindingRow;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * A flight controller looked at before it is chosen.
 *
 * @param isInLedger whether its mass and current would go into a line of the ledger
 * @param impact what the budgets would say
 * @param findings what there would be to say of the outputs, worst first
 * @param picture its banks with what hangs on them now; ready markup of our own
 */
record TrialView(
        String code,
        String name,
        boolean isInLedger,
        List<ImpactPart> impact,
        List<BudgetChange> budgets,
        List<FindingRow> findings,
        String picture) {

    /** How a budget stands now and would stand. */
    record BudgetChange(String title, Verdict before, Verdict after) {}

    static TrialView of(BuildReview before, BuildReview after) {
        Build build = after.build();
        Board board = Objects.requireNonNull(after.outputs().fitted());
        return new TrialView(
                board.code(),
                board.name(),
                build.outputs().fitted().part() != null,
                ReviewDelta.between(before, after).impact(),
                Arrays.stream(Budget.values())
                        .map(budget -> new BudgetChange(budget.title(), before.verdict(budget), after.verdict(budget)))
                        .toList(),
                FindingRow.of(after, Budget.OUTPUTS),
                OutputPictures.banks(after.outputs()).html());
    }
}
