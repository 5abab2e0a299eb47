package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.plan.ChannelFault;
import dev.ledgerwing.core.radio.plan.ChannelPlanner;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import dev.ledgerwing.core.radio.plan.PairNeed;
import dev.ledgerwing.core.radio.plan.PairTable;
import dev.ledgerwing.core.radio.plan.PlanAnswer;
import dev.ledgerwing.core.radio.plan.PlanCheck;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * Everything there is to say about the radio of a build: one object for page, sheet and review.
 *
 * @param proposed what the planner would do
 * @param channelsNeeded the fewest channels on which everything fits with the controls there are; null = no number is enough, or not
 *     known
 * @param channelsAvailable what the link has; null = not known
 * @param inForce the recorded channels, or the proposed ones where none are recorded: {@link #isRecorded()}
 * @param faults where the recorded channels break the rule
 * @param pairs what every two switched functions need together
 * @param sharedPairs pairs of functions on one channel of the plan in force, and {@code sharedWeight} the sum of their weights
 * @param onLoss what becomes of each function when the signal is lost
 * @param frame null = the link is no pulse train
 */
public record RadioStatement(
        Build build,
        PlanAnswer proposed,
        @Nullable Integer channelsNeeded,
        @Nullable Integer channelsAvailable,
        List<Channel> inForce,
        List<ChannelFault> faults,
        List<PairNeed> pairs,
        List<Coupling> couplings,
        int sharedPairs,
        int sharedWeight,
        List<LossRow> onLoss,
        @Nullable FrameTiming frame) {

    public RadioStatement {
        inForce = List.copyOf(inForce);
        faults = List.copyOf(faults);
        pairs = List.copyOf(pairs);
        couplings = List.copyOf(couplings);
        onLoss = List.copyOf(onLoss);
    }

    public static RadioStatement of(Build build) {
        ChannelProblem problem = ChannelProblem.of(build);
        RadioLink link = build.radio().link();
        List<Channel> recorded = build.radio().channels();
        PlanAnswer proposed = ChannelPlanner.plan(problem);
        List<Channel> inForce = recorded.isEmpty() ? proposed.channels() : recorded;
        Sharing sharing = Sharing.of(build.radio(), inForce);
        return new RadioStatement(
                build,
                proposed,
                channelsNeeded(problem),
                link == null ? null : link.channels(),
                inForce,
                recorded.isEmpty() ? List.of() : PlanCheck.of(problem),
                PairTable.of(problem),
                Couplings.of(build, inForce),
                sharing.pairs(),
                sharing.weight(),
                LossRule.rows(build),
                frame(link));
    }

    /** Without any function nothing is known of what is needed. */
    private static @Nullable Integer channelsNeeded(ChannelProblem problem) {
        OptionalInt needed =
                problem.radio().functions().isEmpty() ? OptionalInt.empty() : ChannelPlanner.channelsNeeded(problem);
        return needed.isPresent() ? needed.getAsInt() : null;
    }

    private static @Nullable FrameTiming frame(@Nullable RadioLink link) {
        return link == null || link.train() == null ? null : FrameTiming.of(link.train(), link.channels());
    }

    public Radio radio() {
        return build.radio();
    }

    /** Neither a link nor controls nor functions are recorded. */
    public boolean isBlank() {
        Radio radio = radio();
        return radio.link() == null
                && radio.controls().isEmpty()
                && radio.functions().isEmpty();
    }

    /** Whether the plan in force is one that the team has recorded; otherwise it is only proposed. */
    public boolean isRecorded() {
        return !radio().channels().isEmpty();
    }

    /** Where the recorded channels certainly break the rule. */
    public List<ChannelFault> broken() {
        return faults.stream()
                .filter(fault -> fault.kind() != ChannelFault.Kind.NOT_DECIDED)
                .toList();
    }

    /** Everything is recorded, and still there are too many combinations to find a plan or to rule it out. */
    public boolean isUndecided() {
        return proposed.missing().contains(ChannelPlanner.TOO_MANY);
    }

    /** Certainly no number of channels is enough with the controls there are. */
    public boolean fitsOnNoNumber() {
        return channelsNeeded == null
                && proposed.outcome() == PlanAnswer.Outcome.DOES_NOT_FIT
                && ChannelPlanner.noNumberDoes(ChannelProblem.of(build));
    }
}
