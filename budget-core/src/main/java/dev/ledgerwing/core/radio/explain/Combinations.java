package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Tries to give up combinations of two states of two functions: in one phase if that is enough, else in every phase that asks
 * for both. Only what the core asks for can help, for a core that stays as it was still does not fit.
 */
final class Combinations {

    private final ChannelProblem whole;
    private final ChannelProblem asked;
    private final Predicate<UnaryOperator<ChannelProblem>> becomesFit;
    private final List<Relaxation> found = new ArrayList<>();

    Combinations(ChannelProblem whole, ChannelProblem core, Predicate<UnaryOperator<ChannelProblem>> becomesFit) {
        this.whole = whole;
        this.asked = holds(whole) ? FewerFunctions.kept(whole, codes(core)) : core;
        this.becomesFit = becomesFit;
    }

    /**
     * A receiver that holds lets a function stay in every state that is asked for, so that a demand can also make things
     * easier: then a demand that the core can do without may still count.
     */
    private static boolean holds(ChannelProblem problem) {
        RadioLink link = problem.radio().link();
        return link != null && link.onLoss() == RadioLink.OnLoss.HOLD;
    }

    private static List<String> codes(ChannelProblem problem) {
        return problem.radio().functions().stream().map(RadioFunction::code).collect(Collectors.toList());
    }

    List<Relaxation> found() {
        List<RadioFunction> sharing = asked.radio().functions().stream()
                .filter(RadioFunction::mayShare)
                .map(each -> recorded(each.code()))
                .toList();
        for (int i = 0; i < sharing.size(); i++) {
            for (int j = i + 1; j < sharing.size(); j++) {
                statesOf(sharing.get(i), sharing.get(j));
            }
        }
        return found;
    }

    private RadioFunction recorded(String code) {
        return function(whole, code);
    }

    /** Where all combinations of two functions together are not enough, none of them is. */
    private void statesOf(RadioFunction first, RadioFunction second) {
        List<GiveUp> all = new ArrayList<>();
        for (String firstState : first.states()) {
            for (String secondState : second.states()) {
                List<Phase> phases = whole.phases().stream()
                        .filter(phase -> asks(first, phase, firstState) && asks(second, phase, secondState))
                        .toList();
                all.add(new GiveUp(first, firstState, second, secondState, phases));
            }
        }
        all.removeIf(each -> askedFor(each).isEmpty());
        if (!all.isEmpty() && becomesFit.test(problem -> without(problem, all))) {
            all.forEach(this::tried);
        }
    }

    private static ChannelProblem without(ChannelProblem problem, List<GiveUp> combinations) {
        ChannelProblem left = problem;
        for (GiveUp each : combinations) {
            left = each.in(left);
        }
        return left;
    }

    private List<Phase> askedFor(GiveUp everywhere) {
        RadioFunction first = function(asked, everywhere.first().code());
        RadioFunction second = function(asked, everywhere.second().code());
        return everywhere.phases().stream()
                .filter(phase ->
                        asks(first, phase, everywhere.firstState()) && asks(second, phase, everywhere.secondState()))
                .toList();
    }

    private void tried(GiveUp everywhere) {
        if (!becomesFit.test(everywhere::in)) {
            return;
        }
        List<GiveUp> single = askedFor(everywhere).stream()
                .map(everywhere::only)
                .filter(each -> becomesFit.test(each::in))
                .toList();
        found.addAll(single);
        if (single.isEmpty()) {
            found.add(everywhere);
        }
    }

    private static boolean asks(RadioFunction function, Phase phase, String state) {
        return function.demandIn(phase.code()).mustSelect().contains(state);
    }

    private static RadioFunction function(ChannelProblem problem, String code) {
        return problem.radio().functions().stream()
                .filter(each -> each.code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}
