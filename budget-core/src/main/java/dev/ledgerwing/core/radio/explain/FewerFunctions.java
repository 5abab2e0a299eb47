package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the channels are asked to do by some of the functions only. */
final class FewerFunctions {

    private FewerFunctions() {}

    /** The functions that need a channel and the channels that are pinned: all that a plan has to heed. */
    static ChannelProblem heeded(ChannelProblem problem) {
        Radio radio = problem.radio();
        List<Channel> pinned = radio.channels().stream().filter(Channel::pinned).toList();
        return kept(
                new ChannelProblem(withChannels(radio, pinned), problem.phases()),
                radio.functions().stream()
                        .filter(RadioFunction::needsChannel)
                        .map(RadioFunction::code)
                        .collect(Collectors.toSet()));
    }

    static ChannelProblem without(ChannelProblem problem, String code) {
        return kept(problem, each -> !each.equals(code));
    }

    static ChannelProblem kept(ChannelProblem problem, Collection<String> codes) {
        return kept(problem, Set.copyOf(codes)::contains);
    }

    /** A combination given up that names a function taken away says nothing of those that stay. */
    private static ChannelProblem kept(ChannelProblem problem, Predicate<String> stays) {
        Radio radio = problem.radio();
        List<NotNeeded> notNeeded = radio.notNeeded().stream()
                .filter(given -> given.states().stream().allMatch(each -> stays.test(each.function())))
                .toList();
        List<RadioFunction> functions = radio.functions().stream()
                .filter(each -> stays.test(each.code()))
                .toList();
        List<Channel> channels = radio.channels().stream()
                .flatMap(channel -> off(channel, stays))
                .toList();
        return new ChannelProblem(
                new Radio(radio.link(), radio.controls(), functions, channels, notNeeded), problem.phases());
    }

    /** A channel whose last function goes is gone too; one that carried nothing stays as it is. */
    private static Stream<Channel> off(Channel channel, Predicate<String> stays) {
        List<Channel.Carried> carried = channel.carries().stream()
                .filter(each -> stays.test(each.function()))
                .toList();
        return carried.isEmpty() && !channel.carries().isEmpty()
                ? Stream.empty()
                : Stream.of(channel.withCarries(carried));
    }

    static Radio withChannels(Radio radio, List<Channel> channels) {
        return new Radio(radio.link(), radio.controls(), radio.functions(), channels, radio.notNeeded());
    }
}
