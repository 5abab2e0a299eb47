package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;

/**
 * A revision with the record after it and what the budgets say of it.
 *
 * @param fingerprint sha-256 of the stored document, in hexadecimal
 */
public record Snapshot(Revision revision, Build build, BuildReview review, String fingerprint) {

    /** The review with its sentences in a member's units. */
    public BuildReview reviewIn(Figures figures) {
        return review.units().equals(figures) ? review : BuildReview.of(build, figures);
    }

    /** The first twelve digits, enough to tell sheets apart. */
    public String shortFingerprint() {
        return fingerprint.substring(0, 12);
    }
}
