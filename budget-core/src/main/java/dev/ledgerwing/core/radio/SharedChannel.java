package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A channel whose control sets several switched functions at once.
 *
 * @param states the states of each function, by position of the control
 */
record SharedChannel(int number, Map<RadioFunction, List<String>> states) {

    /** Empty where fewer than two switched functions have their states on it. */
    static Optional<SharedChannel> of(Channel channel, List<RadioFunction> functions) {
        Map<RadioFunction, List<String>> states = new LinkedHashMap<>();
        for (Carried carried : channel.carries()) {
            functions.stream()
                    .filter(function -> function.code().equals(carried.function())
                            && !carried.states().isEmpty())
                    .forEach(function -> states.put(function, carried.states()));
        }
        return states.size() < 2 ? Optional.empty() : Optional.of(new SharedChannel(channel.number(), states));
    }

    /** Positions at which no state does harm in a phase. */
    List<Integer> harmlessIn(String phase) {
        int positions = states.values().iterator().next().size();
        return IntStream.range(0, positions)
                .filter(at -> states.entrySet().stream()
                        .allMatch(each -> each.getKey()
                                .demandIn(phase)
                                .allows(each.getValue().get(at))))
                .boxed()
                .toList();
    }

    /** The states a function takes at some positions, in their order. */
    List<String> statesAt(RadioFunction function, List<Integer> positions) {
        List<String> all = states.getOrDefault(function, List.of());
        return positions.stream().map(all::get).distinct().toList();
    }

    /** Those of some positions at which a function has a state. */
    List<Integer> positionsWith(RadioFunction function, String state, List<Integer> positions) {
        List<String> all = states.getOrDefault(function, List.of());
        return positions.stream().filter(at -> all.get(at).equals(state)).toList();
    }
}
