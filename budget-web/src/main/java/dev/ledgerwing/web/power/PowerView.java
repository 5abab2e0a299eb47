package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.web.airframe.FindingRow;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The power page of one airframe, ready to be shown.
 *
 * @param isEmpty whether no source, no rail and no feed is recorded
 * @param moreFindings how many findings are left out, none of them worse than those shown
 */
record PowerView(
        boolean isEmpty,
        List<FindingRow> findings,
        int moreFindings,
        List<SourceRow> sources,
        List<RailRow> rails,
        List<FeedGroup> feeds,
        List<LoadGroup> loads,
        List<LoadGroup.Silent> silent) {

    static PowerView of(BuildReview review, @Nullable String failed) {
        Build build = review.build();
        Power power = build.power();
        List<FindingRow> findings = FindingRow.of(review, Budget.POWER);
        return new PowerView(
                power.sources().isEmpty()
                        && power.rails().isEmpty()
                        && power.feeds().isEmpty(),
                findings,
                review.findings(Budget.POWER).size() - findings.size(),
                SourceRow.of(review),
                RailRow.of(review),
                FeedGroup.of(review),
                LoadGroup.of(build),
                LoadGroup.silent(build));
    }
}
