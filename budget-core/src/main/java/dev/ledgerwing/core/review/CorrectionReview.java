package dev.ledgerwing.core.review;

import dev.ledgerwing.core.balance.correction.Correction;

/**
 * A correction with what it does to every budget.
 *
 * @param after the whole review of the record after it
 */
public record CorrectionReview(Correction correction, BuildReview after, ReviewDelta delta) {

    /** Sentences in the units of {@code now}. */
    public static CorrectionReview of(BuildReview now, Correction correction) {
        BuildReview after = BuildReview.of(correction.after(), now.units());
        return new CorrectionReview(correction, after, ReviewDelta.between(now, after));
    }

    /** Whether something stands worse after it than before. */
    public boolean breaksSomething() {
        return delta.findings().stream().anyMatch(FindingChange::isWorse);
    }
}
