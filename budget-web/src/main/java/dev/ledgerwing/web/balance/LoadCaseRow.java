package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.balance.CaseBalance;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.sheet.CaseEntry;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One load case with where it balances.
 *
 * @param verdict null on the ground, where there is no band
 */
record LoadCaseRow(String code, CaseEntry entry, @Nullable Verdict verdict) {

    static List<LoadCaseRow> of(BuildReview review) {
        return review.balance().cases().stream()
                .map(each -> new LoadCaseRow(each.loadCase().code(), CaseEntry.of(each, review), verdict(each, review)))
                .toList();
    }

    private static @Nullable Verdict verdict(CaseBalance aboard, BuildReview review) {
        return aboard.isFlight()
                ? review.finding(BalanceFindings.CG, aboard.loadCase().name())
                        .map(Finding::verdict)
                        .orElse(Verdict.UNKNOWN)
                : null;
    }
}
