package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.radio.plan.ChannelPlanner;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import dev.ledgerwing.core.radio.plan.PlanAnswer;
import java.util.List;

/**
 * Why the functions do not fit on the channels: a reason of which nothing can be left out. Its causes alone do not fit, and
 * without any one of them they do, as far as there are not too many combinations to tell; where there are far too many, the one reason
 * is that all functions together do not fit.
 *
 * @param reasons in the order in which they are told; none when the functions fit, or when that is not known
 * @param core what is left to be planned when everything is dropped that the reasons do not need
 */
public record Explanation(List<Reason> reasons, ChannelProblem core) {

    public Explanation {
        reasons = List.copyOf(reasons);
    }

    public static Explanation of(ChannelProblem problem) {
        if (!doesNotFit(problem)) {
            return new Explanation(List.of(), problem);
        }
        if (Core.isTooLarge(problem)) {
            return new Explanation(List.of(ReasonWords.ofAll(problem)), problem);
        }
        ChannelProblem core = Core.of(problem);
        return new Explanation(ReasonWords.of(core), core);
    }

    static boolean doesNotFit(ChannelProblem problem) {
        return ChannelPlanner.doesNotFit(problem)
                && ChannelPlanner.plan(problem).outcome() == PlanAnswer.Outcome.DOES_NOT_FIT;
    }

    /** Everything the reasons tell of. */
    public List<Cause> causes() {
        return reasons.stream().flatMap(each -> each.causes().stream()).toList();
    }

    /** The problem without one of the causes, to see what it does. */
    public ChannelProblem coreWithout(Cause cause) {
        return cause.takenFrom(core);
    }
}
