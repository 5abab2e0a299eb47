package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.RadioLink;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Which functions share which channel, exactly: everything fits; then the least shared weight; then the fewest channels; then as
 * many functions as possible stay on the channel they have, and the rest follows the order of the record.
 */
public final class ChannelPlanner {

    private ChannelPlanner() {}

    /** The plan, or that there is none, or what is missing to know. */
    public static PlanAnswer plan(ChannelProblem problem) {
        List<String> missing = missing(problem);
        RadioLink link = problem.radio().link();
        if (link == null || !missing.isEmpty()) {
            return PlanAnswer.notKnown(missing);
        }
        return PlanSearch.of(problem)
                .best(link.channels())
                .map(drafts -> written(problem, drafts))
                .orElseGet(PlanAnswer::doesNotFit);
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
        RadioLink link = problem.radio().link();
        return link != null
                && missing(problem).isEmpty()
                && PlanSearch.of(problem).fits(link.channels());
    }

    /** With how many channels everything would fit by the controls there are, whatever the link has; none = with none. */
    public static OptionalInt channelsNeeded(ChannelProblem problem) {
        return PlanSearch.of(problem).fewest();
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
