package dev.ledgerwing.report.site;

import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.sheet.SheetHead;

/** One airframe of the site: what is said about it, and which record that was said about. */
public record SiteAirframe(BuildReview review, SheetHead head) {

    String code() {
        return review.build().airframe().code();
    }

    String name() {
        return review.build().airframe().name();
    }
}
