package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Radio;
import java.util.List;

/**
 * One control of the transmitter.
 *
 * @param kind what it is, and in how many positions it stands
 * @param moves the channels it moves; empty where it is free
 */
record ControlRow(String code, String name, String kind, String moves) {

    static List<ControlRow> of(Radio radio, List<Channel> channels, RadioNames names) {
        return radio.controls().stream()
                .map(control -> new ControlRow(
                        control.code(), control.name(), kind(control, names), moves(control, radio, channels)))
                .toList();
    }

    private static String kind(Control control, RadioNames names) {
        return switch (control.kind()) {
            case STICK -> "one axis of a stick";
            case SLIDER -> "slides or turns";
            case SWITCH -> "switch of " + control.positions() + " positions";
            case MIXED ->
                RadioNames.all(control.mixes(), names::control) + " together, " + control.positions() + " positions";
        };
    }

    private static String moves(Control control, Radio radio, List<Channel> channels) {
        String own = numbers(control.code(), channels);
        return own.isEmpty()
                ? RadioNames.all(radio.controls().stream()
                        .filter(mix -> mix.mixes().contains(control.code()))
                        .filter(mix -> !numbers(mix.code(), channels).isEmpty())
                        .map(mix -> numbers(mix.code(), channels) + ", mixed"))
                : own;
    }

    private static String numbers(String code, List<Channel> channels) {
        return RadioNames.all(channels.stream()
                .filter(channel -> code.equals(channel.control()))
                .map(Channel::name));
    }
}
