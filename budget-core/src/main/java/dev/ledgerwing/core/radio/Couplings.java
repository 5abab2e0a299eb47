package dev.ledgerwing.core.radio;

import static dev.ledgerwing.core.radio.RadioWords.and;
import static dev.ledgerwing.core.radio.RadioWords.or;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.radio.PhaseCouplings.Cost;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The couplings of a plan over all its phases: the same one is told once, with the phases in which it matters. */
final class Couplings {

    private final Build build;
    private final RadioWords words;
    private final StopFunctions stops;
    private final Map<Key, Phases> found = new LinkedHashMap<>();

    private record Key(int channel, FunctionState wanted, List<FunctionState> with, boolean packFull) {}

    /** Where something matters, and how much at most. */
    private record Phases(List<String> codes, int weight) {

        Phases and(String code, int weightThere) {
            List<String> more = new ArrayList<>(codes);
            more.add(code);
            return new Phases(more, Math.max(weight, weightThere));
        }
    }

    private Couplings(Build build) {
        this.build = build;
        words = new RadioWords(build);
        stops = StopFunctions.of(build);
    }

    /** Most important first: a charging that cannot be stopped, then what takes most away. */
    static List<Coupling> of(Build build, List<Channel> channels) {
        Couplings couplings = new Couplings(build);
        channels.stream()
                .flatMap(channel -> SharedChannel.of(channel, build.radio().functions()).stream())
                .forEach(couplings::look);
        return couplings.inOrder();
    }

    private void look(SharedChannel channel) {
        for (Phase phase : build.phases()) {
            for (Cost cost : new PhaseCouplings(channel, phase, stops).costs()) {
                Key key = new Key(channel.number(), cost.wanted(), cost.with(), cost.packFull());
                Phases known = found.getOrDefault(key, new Phases(List.of(), 0));
                found.put(key, known.and(phase.code(), cost.weight()));
            }
        }
    }

    private List<Coupling> inOrder() {
        Comparator<Map.Entry<Key, Phases>> lightFirst = Comparator.comparing(
                        (Map.Entry<Key, Phases> each) -> each.getKey().packFull())
                .thenComparing(each -> each.getValue().weight());
        return found.entrySet().stream()
                .sorted(lightFirst.reversed())
                .map(each -> coupling(each.getKey(), each.getValue().codes()))
                .toList();
    }

    private Coupling coupling(Key key, List<String> phases) {
        return new Coupling(key.channel(), phases, key.wanted(), key.with(), sentence(key, phases));
    }

    /** {@code In Cruise you cannot have Charging off without Landing gear down.} */
    private String sentence(Key key, List<String> phases) {
        String where = words.phases(phases);
        FunctionState wanted = key.wanted();
        return key.packFull()
                ? "With the pack full in " + where + " you cannot switch " + words.name(wanted.function()) + " to "
                        + wanted.state() + " without " + with(key, " going to ") + "."
                : "In " + where + " you cannot have " + words.state(wanted) + " without " + with(key, " ") + ".";
    }

    private String with(Key key, String between) {
        Map<String, List<String>> byFunction = key.with().stream()
                .collect(Collectors.groupingBy(
                        FunctionState::function,
                        LinkedHashMap::new,
                        Collectors.mapping(FunctionState::state, Collectors.toList())));
        List<String> each = byFunction.entrySet().stream()
                .map(other -> words.name(other.getKey()) + between + or(other.getValue()))
                .toList();
        return and(each);
    }
}
