package dev.ledgerwing.core.radio;

import static dev.ledgerwing.core.radio.RadioWords.quoted;

import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Whether enough is said of the switched functions for a plan to mean anything. */
record DemandRule(RadioStatement statement) {

    Stream<Finding> findings() {
        List<RadioFunction> switched = ChannelProblem.of(statement.build()).switched();
        List<Phase> phases = statement.build().phases();
        if (switched.isEmpty()) {
            return Stream.empty();
        }
        return phases.isEmpty()
                ? Stream.of(noPhases(switched))
                : Stream.of(
                                switched.stream().filter(this::asksNothing).map(DemandRule::noDemand),
                                firstPhase(phases.get(0), switched),
                                cameBackTo(phases))
                        .flatMap(Function.identity());
    }

    private static Finding noPhases(List<RadioFunction> switched) {
        return Judged.of(RadioFindings.NO_PHASES, "Phases")
                .finding(
                        Verdict.UNKNOWN,
                        "No phases are recorded: when " + RadioWords.named(switched)
                                + " must be selectable is not known.");
    }

    private boolean asksNothing(RadioFunction function) {
        return statement.build().phases().stream()
                .allMatch(phase -> function.demandIn(phase.code()).mustSelect().isEmpty());
    }

    private static Finding noDemand(RadioFunction function) {
        return Judged.of(RadioFindings.NO_DEMAND, function.name())
                .finding(
                        Verdict.UNKNOWN,
                        "No phase asks anything of " + quoted(function.name())
                                + ": which of its states must be selectable is not known.");
    }

    private static Stream<Finding> firstPhase(Phase first, List<RadioFunction> switched) {
        List<RadioFunction> open = switched.stream()
                .filter(function -> function.demandIn(first.code()).mayHave().isEmpty())
                .toList();
        return open.isEmpty()
                ? Stream.empty()
                : Stream.of(
                        Judged.of(RadioFindings.FIRST_PHASE, first.name())
                                .finding(
                                        Verdict.UNKNOWN,
                                        "In " + first.name() + ", the first phase, it is not said which states of "
                                                + RadioWords.named(open)
                                                + " do no harm: a switch may stand anywhere when the airframe is switched on."));
    }

    private static Stream<Finding> cameBackTo(List<Phase> phases) {
        Phase first = phases.get(0);
        List<String> before = phases.stream()
                .filter(phase -> phase.next().contains(first.code()))
                .map(Phase::name)
                .toList();
        return before.isEmpty()
                ? Stream.empty()
                : Stream.of(Judged.of(RadioFindings.FIRST_PHASE, first.name())
                        .finding(
                                Verdict.UNKNOWN,
                                first.name() + " is the first phase, but may follow " + RadioWords.and(before)
                                        + ": put a phase before it in which the airframe is switched on."));
    }
}
