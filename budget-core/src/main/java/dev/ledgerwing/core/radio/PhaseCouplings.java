package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What cannot be had together on one channel in one phase. Two states are lost to each other when each can be selected there, but no
 * position has both. That matters when the phase asks for both, or for one while the other one's function is left open, or for one
 * while selecting the other takes it away.
 */
record PhaseCouplings(SharedChannel channel, Phase phase, StopFunctions stops) {

    /**
     * One wish with what it costs.
     *
     * @param weight the greater, the more it takes away
     * @param packFull whether the wish is to stop a charging that goes on
     */
    record Cost(FunctionState wanted, List<FunctionState> with, int weight, boolean packFull) {}

    private record Lost(Set<FunctionState> both, int weight) {}

    private record Wish(RadioFunction function, String state, List<Lost> losses, boolean packFull) {

        int weight() {
            return losses.stream().mapToInt(Lost::weight).max().orElse(0);
        }
    }

    private static final int BOTH_ASKED = 3;
    private static final int OTHER_OPEN = 2;
    private static final int TAKES_AWAY = 1;

    /** As few as tell all of it, the heaviest first. */
    List<Cost> costs() {
        List<Integer> harmless = channel.harmlessIn(phase.code());
        List<Cost> costs = new ArrayList<>();
        Set<Set<FunctionState>> said = new HashSet<>();
        for (Wish wish : wishes(harmless)) {
            List<Lost> fresh = wish.losses().stream()
                    .filter(lost -> !said.contains(lost.both()))
                    .toList();
            if (!fresh.isEmpty()) {
                fresh.forEach(lost -> said.add(lost.both()));
                costs.add(cost(wish, fresh, harmless));
            }
        }
        return costs;
    }

    private List<Wish> wishes(List<Integer> harmless) {
        List<Wish> wishes = new ArrayList<>();
        for (RadioFunction function : channel.states().keySet()) {
            for (String state : channel.statesAt(function, harmless)) {
                boolean packFull = stops.stopsChargingIn(phase, new FunctionState(function.code(), state));
                wishes.add(new Wish(function, state, losses(function, state, harmless, packFull), packFull));
            }
        }
        wishes.sort(Comparator.comparing((Wish wish) -> wish.packFull() && wish.weight() > 0)
                .thenComparing(Wish::weight)
                .thenComparing(wish -> wish.losses().size())
                .reversed());
        return wishes;
    }

    private List<Lost> losses(RadioFunction function, String state, List<Integer> harmless, boolean packFull) {
        List<Integer> there = channel.positionsWith(function, state, harmless);
        List<Lost> losses = new ArrayList<>();
        for (RadioFunction other : channel.states().keySet()) {
            List<String> with = channel.statesAt(other, there);
            channel.statesAt(other, harmless).stream()
                    .filter(gone -> !other.equals(function) && !with.contains(gone))
                    .map(gone -> lost(function, state, other, gone, packFull))
                    .filter(lost -> lost.weight() > 0)
                    .forEach(losses::add);
        }
        return losses;
    }

    /** Told from the side of what a phase asks for; a choice that it leaves free costs something only where it takes that away. */
    private Lost lost(RadioFunction function, String state, RadioFunction other, String gone, boolean packFull) {
        Set<FunctionState> both =
                Set.of(new FunctionState(function.code(), state), new FunctionState(other.code(), gone));
        boolean asked = asks(function, state);
        boolean goneAsked = asks(other, gone);
        int weight = 0;
        if (asked && goneAsked) {
            weight = BOTH_ASKED;
        } else if ((asked && isOpen(other)) || (packFull && goneAsked && isOpen(function))) {
            weight = OTHER_OPEN;
        } else if (goneAsked && !isOpen(function)) {
            weight = TAKES_AWAY;
        }
        return new Lost(both, weight);
    }

    private boolean asks(RadioFunction function, String state) {
        return function.demandIn(phase.code()).mustSelect().contains(state);
    }

    private boolean isOpen(RadioFunction function) {
        return function.demandIn(phase.code()).mustSelect().isEmpty();
    }

    private Cost cost(Wish wish, List<Lost> fresh, List<Integer> harmless) {
        FunctionState wanted = new FunctionState(wish.function().code(), wish.state());
        List<Integer> there = channel.positionsWith(wish.function(), wish.state(), harmless);
        List<FunctionState> with = channel.states().keySet().stream()
                .filter(other ->
                        !other.equals(wish.function()) && fresh.stream().anyMatch(lost -> names(lost, other)))
                .flatMap(other ->
                        channel.statesAt(other, there).stream().map(state -> new FunctionState(other.code(), state)))
                .toList();
        return new Cost(wanted, with, wish.weight(), wish.packFull());
    }

    private static boolean names(Lost lost, RadioFunction function) {
        return lost.both().stream().anyMatch(state -> state.function().equals(function.code()));
    }
}
