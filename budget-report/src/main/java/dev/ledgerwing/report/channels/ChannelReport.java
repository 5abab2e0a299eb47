package dev.ledgerwing.report.channels;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.core.radio.explain.Explanation;
import dev.ledgerwing.core.radio.explain.Reason;
import dev.ledgerwing.core.radio.explain.Relaxations;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import dev.ledgerwing.core.radio.plan.PlanAnswer.Outcome;
import dev.ledgerwing.core.review.BuildReview;
import java.util.List;

/**
 * What there is to say of the channels of one build.
 *
 * @param reasons why they do not fit; none where they do, or where that is not known
 * @param relaxations concessions each of which alone makes them fit
 */
public record ChannelReport(BuildReview review, List<Reason> reasons, Relaxations relaxations) {

    public ChannelReport {
        reasons = List.copyOf(reasons);
    }

    public static ChannelReport of(BuildReview review) {
        if (review.radio().proposed().outcome() != Outcome.DOES_NOT_FIT) {
            return new ChannelReport(review, List.of(), new Relaxations(List.of(), false, false));
        }
        ChannelProblem problem = ChannelProblem.of(review.build());
        return new ChannelReport(review, Explanation.of(problem).reasons(), Relaxations.of(problem));
    }

    RadioStatement radio() {
        return review.radio();
    }

    Build build() {
        return review.build();
    }
}
