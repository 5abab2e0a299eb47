package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.radio.Coupling;
import dev.ledgerwing.core.radio.RadioStatement;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A channel that several functions share, with what cannot be had together because of it.
 *
 * @param couplings a sentence each; none = nothing that a phase asks for is lost
 */
public record SharedEntry(int number, String functions, List<String> couplings) {

    public SharedEntry {
        couplings = List.copyOf(couplings);
    }

    static List<SharedEntry> of(RadioStatement radio) {
        return radio.inForce().stream()
                .filter(channel -> channel.carries().size() > 1)
                .map(channel -> new SharedEntry(channel.number(), functions(radio, channel), couplings(radio, channel)))
                .toList();
    }

    private static String functions(RadioStatement radio, Channel channel) {
        return radio.build().radio().functions().stream()
                .filter(function -> channel.functions().contains(function.code()))
                .map(RadioFunction::name)
                .collect(Collectors.joining(", "));
    }

    private static List<String> couplings(RadioStatement radio, Channel channel) {
        return radio.couplings().stream()
                .filter(coupling -> coupling.channel() == channel.number())
                .map(Coupling::sentence)
                .toList();
    }
}
