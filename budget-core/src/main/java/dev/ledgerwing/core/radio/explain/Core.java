package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.radio.plan.ChannelPlanner;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is left of a plan that does not fit when everything is dropped that it does not need for that. Whole groups are tried
 * first, then one thing after the other in a fixed order, over and over until nothing more can go: so every single thing in
 * the result is needed, whatever was dropped before it.
 */
final class Core {

    /** Functions that could share times phases times positions. */
    private static final int MOST_TO_SEARCH = 3000;

    private Core() {}

    static ChannelProblem of(ChannelProblem problem) {
        ChannelProblem functions = FunctionCore.of(FewerFunctions.heeded(problem));
        ChannelProblem plain = functions;
        for (Cause.Kind kind : List.of(Cause.Kind.ORDER, Cause.Kind.PIN, Cause.Kind.LOSS, Cause.Kind.DECODER)) {
            plain = droppedTogether(plain, Causes.of(plain, kind));
        }
        ChannelProblem last = plain;
        return inOnePhase(last).orElseGet(() -> overPhases(last));
    }

    /** Of the phases that are enough by themselves the one that takes least to tell. */
    private static Optional<ChannelProblem> inOnePhase(ChannelProblem problem) {
        return problem.phases().stream()
                .map(phase -> without(problem, outside(problem, phase)))
                .filter(Core::breaks)
                .map(Core::oneByOne)
                .min(Comparator.comparingInt(each -> Causes.of(each).size()));
    }

    private static ChannelProblem overPhases(ChannelProblem problem) {
        ChannelProblem left = problem;
        List<Phase> phases = new ArrayList<>(problem.phases());
        Collections.reverse(phases);
        for (Phase phase : phases) {
            List<Cause> inside = new ArrayList<>(Causes.of(left));
            inside.removeAll(outside(left, phase));
            inside.removeIf(cause -> !ofPhase(cause));
            left = droppedTogether(left, inside);
        }
        return oneByOne(left);
    }

    private static List<Cause> outside(ChannelProblem problem, Phase phase) {
        return Causes.of(problem).stream()
                .filter(cause -> ofPhase(cause) && !phase.code().equals(cause.phase()))
                .toList();
    }

    private static boolean ofPhase(Cause cause) {
        return cause.kind() == Cause.Kind.DEMAND || cause.kind() == Cause.Kind.LIMIT;
    }

    private static ChannelProblem oneByOne(ChannelProblem problem) {
        ChannelProblem left = problem;
        List<Cause> causes = new ArrayList<>(Causes.of(left));
        boolean dropped = true;
        while (dropped) {
            dropped = false;
            for (int i = causes.size() - 1; i >= 0; i--) {
                ChannelProblem less = causes.get(i).takenFrom(left);
                if (breaks(less)) {
                    left = less;
                    dropped = true;
                }
            }
            causes = new ArrayList<>(Causes.of(left));
        }
        return left;
    }

    private static ChannelProblem droppedTogether(ChannelProblem problem, List<Cause> causes) {
        ChannelProblem less = without(problem, causes);
        return !causes.isEmpty() && breaks(less) ? less : problem;
    }

    private static ChannelProblem without(ChannelProblem problem, List<Cause> causes) {
        ChannelProblem left = problem;
        for (Cause cause : causes) {
            left = cause.takenFrom(left);
        }
        return left;
    }

    /** Whether asking the planner again and again, as telling the reason takes, would take too long. */
    static boolean isTooLarge(ChannelProblem problem) {
        long sharing = problem.radio().functions().stream()
                .filter(function -> function.needsChannel() && function.mayShare())
                .count();
        int positions = Room.of(problem.radio()).mostPositions();
        return sharing * Math.max(1, problem.phases().size()) * positions > MOST_TO_SEARCH;
    }

    static boolean breaks(ChannelProblem problem) {
        return ChannelPlanner.doesNotFit(problem);
    }
}
