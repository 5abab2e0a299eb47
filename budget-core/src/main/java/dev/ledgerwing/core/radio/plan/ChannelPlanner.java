package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.plan.Effort.TooManyCombinations;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Which functions share which channel, exactly: everything fits; then the least shared weight; then the fewest channels; then as
 * many functions as possible stay on the channel they have, and the rest follows the order of the record.
 */
public final class ChannelPlanner {

    /** What keeps the answer from being known where the search would take too long. */
    public static final String TOO_MANY =
            "the combinations are too many to decide: pin some functions to channels of their own";

    private ChannelPlanner() {}

    /** The plan, or that there is none, or what is missing to know. */
    public static PlanAnswer plan(ChannelProblem problem) {
        List<String> missing = missing(problem);
        RadioLink link = problem.radio().link();
        if (link == null || !missing.isEmpty()) {
            return PlanAnswer.notKnown(missing);
        }
        try {
            return PlanSearch.of(problem)
                    .best(link.channels())
                    .map(drafts -> written(problem, drafts))
                    .orElseGet(PlanAnswer::doesNotFit);
        } catch (TooManyCombinations searchedInVain) {
            return PlanAnswer.notKnown(List.of(TOO_MANY));
        }
    }

    private static PlanAnswer written(ChannelProblem problem, List<Draft> drafts) {
        List<Channel> channels = PlanWriting.channels(problem, drafts);
        int pairs = drafts.stream()
                .mapToInt(draft -> draft.functions().size() * (draft.functions().size() - 1) / 2)
                .sum();
        int weight = drafts.stream().mapToInt(Draft::sharedWeight).sum();
        return new PlanAnswer(PlanAnswer.Outcome.FITS, channels, pairs, weight, List.of());
    }

    /** Whether there is a plan; false also where that is not known. */
    public static boolean fits(ChannelProblem problem) {
        return mayFit(problem, false);
    }

    /** Whether it is certain that there is no plan; false also where that is not known. */
    public static boolean doesNotFit(ChannelProblem problem) {
        return missing(problem).isEmpty() && !mayFit(problem, true);
    }

    private static boolean mayFit(ChannelProblem problem, boolean undecided) {
        RadioLink link = problem.radio().link();
        try {
            return link != null
                    && missing(problem).isEmpty()
                    && PlanSearch.of(problem).fits(link.channels());
        } catch (TooManyCombinations searchedInVain) {
            return undecided;
        }
    }

    /** With how many channels everything would fit by the controls there are, whatever the link has; none = with none, or too hard to tell. */
    public static OptionalInt channelsNeeded(ChannelProblem problem) {
        try {
            return PlanSearch.of(problem).fewest();
        } catch (TooManyCombinations searchedInVain) {
            return OptionalInt.empty();
        }
    }

    /** Whether it is certain that no number of channels is enough with the controls there are; false where that is not known. */
    public static boolean noNumberDoes(ChannelProblem problem) {
        try {
            return !PlanSearch.of(problem).fitsAtAll();
        } catch (TooManyCombinations searchedInVain) {
            return false;
        }
    }

    private static List<String> missing(ChannelProblem problem) {
        List<String> missing = new ArrayList<>();
        if (problem.radio().link() == null) {
            missing.add("the link and how many channels it has");
        }
        if (!problem.switched().isEmpty() && problem.stepping().isEmpty()) {
            missing.add("a switch");
        }
        if (!problem.proportional().isEmpty() && problem.free().isEmpty()) {
            missing.add("a stick or a slider");
        }
        return missing;
    }
}
