package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.Effort.TooManyCombinations;
import dev.ledgerwing.core.radio.plan.PairNeed.Never;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** For every two switched functions on the radio what they need to share a channel. */
public final class PairTable {

    /** Of the switches that there are by themselves; a mix of two has more, but then is two switches. */
    static final int MOST_POSITIONS = 6;

    /** For each pair: there can be hundreds. */
    private static final int MOST_STEPS = 1_000;

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
        try {
            return searched(pair);
        } catch (TooManyCombinations searchedInVain) {
            return new PairNeed(first.code(), second.code(), null, Never.NOT_DECIDED);
        }
    }

    private PairNeed searched(List<RadioFunction> pair) {
        String first = pair.get(0).code();
        String second = pair.get(1).code();
        OptionalInt least = leastPositions(CodedRadio.of(problem, pair));
        return least.isPresent()
                ? new PairNeed(first, second, least.getAsInt(), Never.NONE)
                : new PairNeed(first, second, null, why(pair));
    }

    private static OptionalInt leastPositions(CodedRadio radio) {
        radio.effort().keep(MOST_STEPS);
        return GroupNeed.leastPositions(radio, MOST_POSITIONS);
    }

    private Never why(List<RadioFunction> pair) {
        if (leastPositions(CodedRadio.withoutLoss(problem, pair)).isPresent()) {
            return Never.LOSS_OF_SIGNAL;
        }
        boolean room = leastPositions(CodedRadio.inAnyOrder(problem, pair)).isPresent();
        return room ? Never.NO_ORDER : Never.CLASH;
    }
}
