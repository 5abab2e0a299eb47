package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where the radio speaks of a function or of one of its states, in words. */
final class StateMentions {

    private StateMentions() {}

    /** What goes when a function does: {@code its place on channel 6}. */
    static Stream<String> ofFunction(String function, Build build) {
        Stream<String> channels = build.radio().channels().stream()
                .filter(channel -> channel.functions().contains(function))
                .map(channel -> "its place on " + channel.name());
        Stream<String> given = build.radio().notNeeded().stream()
                .filter(each -> each.states().stream()
                        .anyMatch(state -> state.function().equals(function)))
                .map(each -> "the combination given up " + each.name());
        return Stream.concat(channels, given);
    }

    /** Where a state is asked for, allowed, commanded or given up; empty where nobody speaks of it. */
    static String of(RadioFunction function, String state, Build build) {
        List<String> mentions = new ArrayList<>();
        String phases = build.phases().stream()
                .filter(phase -> speaksOf(function.demandIn(phase.code()), state))
                .map(Phase::name)
                .collect(Collectors.joining(", "));
        if (!phases.isEmpty()) {
            mentions.add("the demands in " + phases);
        }
        build.radio().channels().stream()
                .filter(channel -> carries(channel, function.code(), state))
                .forEach(channel -> mentions.add(channel.name()));
        build.radio().notNeeded().stream()
                .filter(given -> given.states().contains(new NotNeeded.FunctionState(function.code(), state)))
                .forEach(given -> mentions.add("the combination given up " + given.name()));
        return String.join(", ", mentions);
    }

    private static boolean speaksOf(Demand demand, String state) {
        return demand.mustSelect().contains(state) || demand.mayHave().contains(state);
    }

    private static boolean carries(Channel channel, String function, String state) {
        return channel.carries().stream()
                .anyMatch(carried -> carried.function().equals(function)
                        && (carried.states().contains(state) || state.equals(carried.presetState())));
    }
}
