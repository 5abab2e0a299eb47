package dev.ledgerwing.core.review;

import dev.ledgerwing.core.radio.RadioFindings;
import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.core.radio.plan.PlanAnswer;
import dev.ledgerwing.core.verdict.Finding;
import java.util.Objects;
import java.util.Optional;

/** Says how many channels are needed of how many, where a change moves one of them. */
record RadioImpact(BuildReview before, BuildReview after) {

    /** Empty where neither has changed, or how many are needed is not known now. */
    static Optional<ImpactPart> of(BuildReview before, BuildReview after) {
        return new RadioImpact(before, after).part();
    }

    /** Whether it speaks of this finding: that more channels are needed than there are. */
    static boolean speaksOf(Finding finding, BuildReview before, BuildReview after) {
        return finding.code().equals(RadioFindings.PLAN)
                && after.radio().proposed().outcome() == PlanAnswer.Outcome.DOES_NOT_FIT
                && of(before, after).isPresent();
    }

    private Optional<ImpactPart> part() {
        RadioStatement then = before.radio();
        RadioStatement now = after.radio();
        boolean same = Objects.equals(then.channelsNeeded(), now.channelsNeeded())
                && Objects.equals(then.channelsAvailable(), now.channelsAvailable());
        return same || now.channelsNeeded() == null
                ? Optional.empty()
                : Optional.of(new ImpactPart(
                        sentence(now.channelsNeeded(), now),
                        after.finding(RadioFindings.PLAN).map(Finding::verdict).orElse(null)));
    }

    /** {@code Radio: 7 of 6 channels needed.} */
    private static String sentence(int needed, RadioStatement now) {
        Integer available = now.channelsAvailable();
        return available == null
                ? "Radio: " + needed + (needed == 1 ? " channel needed." : " channels needed.")
                : "Radio: " + needed + " of " + available + " channels needed.";
    }
}
