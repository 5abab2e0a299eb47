package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What cannot be had together on one channel in one phase. Two states are lost to each other when each can be selected there, but no
 * position has both. That matters when the phase asks for both, or for one while the other one's function is left open, or for one
 * while selecting the other takes it away.
 */
final class PhaseCouplings {

    /**
     * One wish with what it costs.
     *
     * @param weight the greater, the more it takes away
     * @param packFull whether the wish is to stop a charging that goes on
     */
    record Cost(FunctionState wanted, List<FunctionState> with, int weight, boolean packFull) {}

    /**
     * A state that can be selected without harm.
     *
     * @param number of the choice among all
     * @param member whose state it is
     * @param at the positions that give it
     * @param open whether the phase asks nothing of the function
     */
    private record Choice(
            int number, int member, FunctionState state, BitSet at, boolean asked, boolean open, boolean packFull) {}

    private record Lost(Choice gone, int weight) {}

    private record Wish(Choice choice, List<Lost> losses) {

        int weight() {
            return losses.stream().mapToInt(Lost::weight).max().orElse(0);
        }
    }

    private static final int BOTH_ASKED = 3;
    private static final int OTHER_OPEN = 2;
    private static final int TAKES_AWAY = 1;

    private final SharedChannel channel;
    private final Phase phase;
    private final StopFunctions stops;
    private final BitSet harmless;
    private final List<Choice> choices = new ArrayList<>();

    PhaseCouplings(SharedChannel channel, Phase phase, StopFunctions stops) {
        this.channel = channel;
        this.phase = phase;
        this.stops = stops;
        harmless = channel.harmlessIn(phase.code());
        for (int member = 0; member < channel.members().size(); member++) {
            choose(member);
        }
    }

    private void choose(int member) {
        RadioFunction function = channel.members().get(member).function();
        List<String> asked = function.demandIn(phase.code()).mustSelect();
        Map<String, BitSet> places = new LinkedHashMap<>();
        harmless.stream()
                .forEach(at -> places.computeIfAbsent(
                                channel.members().get(member).states().get(at), any -> new BitSet())
                        .set(at));
        places.forEach((name, at) -> {
            FunctionState state = new FunctionState(function.code(), name);
            choices.add(new Choice(
                    choices.size(),
                    member,
                    state,
                    at,
                    asked.contains(name),
                    asked.isEmpty(),
                    stops.stopsChargingIn(phase, state)));
        });
    }

    /** As few as tell all of it, the heaviest first. */
    List<Cost> costs() {
        List<Cost> costs = new ArrayList<>();
        Set<Long> said = new HashSet<>();
        for (Wish wish : wishes()) {
            List<Lost> fresh = wish.losses().stream()
                    .filter(lost -> said.add(both(wish.choice(), lost.gone())))
                    .toList();
            if (!fresh.isEmpty()) {
                costs.add(cost(wish, fresh));
            }
        }
        return costs;
    }

    private long both(Choice one, Choice other) {
        long first = Math.min(one.number(), other.number());
        return first * choices.size() + Math.max(one.number(), other.number());
    }

    private List<Wish> wishes() {
        List<Wish> wishes = new ArrayList<>();
        choices.forEach(choice -> wishes.add(new Wish(choice, losses(choice))));
        wishes.sort(Comparator.comparing((Wish wish) -> wish.choice().packFull() && wish.weight() > 0)
                .thenComparing(Wish::weight)
                .thenComparing(wish -> wish.losses().size())
                .reversed());
        return wishes;
    }

    private List<Lost> losses(Choice wanted) {
        return choices.stream()
                .filter(gone -> gone.member() != wanted.member() && !gone.at().intersects(wanted.at()))
                .map(gone -> new Lost(gone, weight(wanted, gone)))
                .filter(lost -> lost.weight() > 0)
                .toList();
    }

    /** Told from the side of what a phase asks for; a choice that it leaves free costs something only where it takes that away. */
    private static int weight(Choice wanted, Choice gone) {
        if (wanted.asked() && gone.asked()) {
            return BOTH_ASKED;
        }
        if ((wanted.asked() && gone.open()) || (wanted.packFull() && gone.asked() && wanted.open())) {
            return OTHER_OPEN;
        }
        return gone.asked() && !wanted.open() ? TAKES_AWAY : 0;
    }

    private Cost cost(Wish wish, List<Lost> fresh) {
        BitSet members = new BitSet();
        fresh.forEach(lost -> members.set(lost.gone().member()));
        List<FunctionState> with = members.stream()
                .mapToObj(channel.members()::get)
                .flatMap(member -> wish.choice().at().stream()
                        .mapToObj(member.states()::get)
                        .distinct()
                        .map(state -> new FunctionState(member.function().code(), state)))
                .toList();
        return new Cost(
                wish.choice().state(), with, wish.weight(), wish.choice().packFull());
    }
}
