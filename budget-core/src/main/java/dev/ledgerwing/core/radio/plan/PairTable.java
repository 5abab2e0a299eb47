package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.PairNeed.Never;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** For every two switched functions on the radio what they need to share a channel. */
public final class PairTable {

    private final ChannelProblem problem;

    private PairTable(ChannelProblem problem) {
        this.problem = problem;
    }

    /** In the order of the record, each pair once. */
    public static List<PairNeed> of(ChannelProblem problem) {
        PairTable table = new PairTable(problem);
        List<RadioFunction> switched = problem.switched();
        List<PairNeed> needs = new ArrayList<>();
        for (int i = 0; i < switched.size(); i++) {
            for (int j = i + 1; j < switched.size(); j++) {
                needs.add(table.need(switched.get(i), switched.get(j)));
            }
        }
        return needs;
    }

    private PairNeed need(RadioFunction first, RadioFunction second) {
        List<RadioFunction> pair = List.of(first, second);
        if (pair.stream().anyMatch(each -> each.criticality() == RadioFunction.Criticality.FLIGHT)) {
            return new PairNeed(first.code(), second.code(), null, Never.FLIGHT);
        }
        if (pair.stream().anyMatch(RadioFunction::irreversible)) {
            return new PairNeed(first.code(), second.code(), null, Never.IRREVERSIBLE);
        }
        OptionalInt least = GroupNeed.leastPositions(problem, pair);
        return least.isPresent()
                ? new PairNeed(first.code(), second.code(), least.getAsInt(), Never.NONE)
                : new PairNeed(first.code(), second.code(), null, why(pair));
    }

    private Never why(List<RadioFunction> pair) {
        if (GroupNeed.leastPositions(CodedRadio.withoutLoss(problem, pair)).isPresent()) {
            return Never.LOSS_OF_SIGNAL;
        }
        boolean room =
                GroupNeed.leastPositions(CodedRadio.inAnyOrder(problem, pair)).isPresent();
        return room ? Never.NO_ORDER : Never.CLASH;
    }
}
