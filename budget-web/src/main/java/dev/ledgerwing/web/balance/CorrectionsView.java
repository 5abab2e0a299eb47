package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.balance.correction.CorrectionFinder;
import dev.ledgerwing.core.balance.correction.Corrections;
import dev.ledgerwing.core.review.BuildReview;
import java.util.List;

/** What would put the balance right, cheapest first, and what there is to know of it. */
record CorrectionsView(boolean isNeeded, List<CorrectionRow> offers, List<String> remarks) {

    private static final int MOST = 12;

    static CorrectionsView of(BuildReview review) {
        Corrections found = CorrectionFinder.of(review.balance());
        return new CorrectionsView(
                found.isNeeded(),
                found.offers().stream()
                        .limit(MOST)
                        .map(offer -> CorrectionRow.of(offer, review))
                        .toList(),
                found.remarks(review.units()));
    }
}
