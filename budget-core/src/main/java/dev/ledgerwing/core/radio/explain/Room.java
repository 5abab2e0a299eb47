package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioLink;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What there is for functions to be put on, and what takes it up.
 *
 * @param channels of the link
 * @param taken channels that are pinned, or that a function has to itself
 * @param moving sticks and sliders; {@code proportional} the functions that need one each
 * @param switches that could drive a channel each; {@code switched} those that pins and functions of their own take up
 * @param mostPositions of any switch; 0 without one
 */
record Room(
        int channels,
        int taken,
        int moving,
        List<RadioFunction> proportional,
        int switches,
        int switched,
        int mostPositions,
        List<RadioFunction> settled,
        List<RadioFunction> sharing) {

    static Room of(Radio radio) {
        List<Channel> pinned = radio.channels().stream().filter(Channel::pinned).toList();
        Set<String> onPinned =
                pinned.stream().flatMap(each -> each.functions().stream()).collect(Collectors.toSet());
        List<RadioFunction> settled = radio.functions().stream()
                .filter(each -> !each.mayShare() || onPinned.contains(each.code()))
                .toList();
        List<RadioFunction> free =
                settled.stream().filter(each -> !onPinned.contains(each.code())).toList();
        Set<String> pinnedControls =
                pinned.stream().map(Channel::control).filter(Objects::nonNull).collect(Collectors.toSet());
        return new Room(
                channels(radio),
                pinned.size() + free.size(),
                count(radio, Control.Kind.STICK) + count(radio, Control.Kind.SLIDER),
                settled.stream().filter(Room::moves).toList(),
                count(radio, Control.Kind.SWITCH),
                (int) (free.stream().filter(each -> !moves(each)).count() + stepping(radio, pinnedControls)),
                radio.controls().stream().mapToInt(Room::positions).max().orElse(0),
                settled,
                radio.functions().stream()
                        .filter(each -> each.mayShare() && !onPinned.contains(each.code()))
                        .toList());
    }

    int channelsLeft() {
        return channels - taken;
    }

    int switchesLeft() {
        return switches - switched;
    }

    /** Whether it is the channels that are short, not the switches that could drive them. */
    boolean channelsBind() {
        return channelsLeft() <= switchesLeft();
    }

    private static boolean moves(RadioFunction function) {
        return function.kind() == RadioFunction.Kind.PROPORTIONAL;
    }

    private static int channels(Radio radio) {
        RadioLink link = radio.link();
        return link == null ? 0 : link.channels();
    }

    private static int positions(Control control) {
        Integer positions = control.positions();
        return positions == null ? 0 : positions;
    }

    /** A mixed control uses up the switches it mixes. */
    private static long stepping(Radio radio, Set<String> controls) {
        return radio.controls().stream()
                .filter(each -> each.kind().steps() && controls.contains(each.code()))
                .mapToLong(each -> Math.max(1, each.mixes().size()))
                .sum();
    }

    private static int count(Radio radio, Control.Kind kind) {
        return (int)
                radio.controls().stream().filter(each -> each.kind() == kind).count();
    }
}
