package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.web.forms.Elements;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * One channel of the plan.
 *
 * @param note pinned, shared, or what is missing; empty where there is nothing to say
 * @param positions what each position commands, in order along the pulse; one without a number where the control moves freely
 */
record PlanRow(int number, String control, String note, List<Position> positions) {

    /**
     * A place of the control and the states it commands.
     *
     * @param label {@code 2}; empty where the control moves freely
     */
    record Position(String label, String commands) {}

    static List<PlanRow> of(List<Channel> channels, List<Control> controls, RadioNames names) {
        return channels.stream().map(channel -> row(channel, controls, names)).toList();
    }

    private static PlanRow row(Channel channel, List<Control> controls, RadioNames names) {
        String code = channel.control();
        Control control = code == null ? null : Elements.find(controls, code);
        return new PlanRow(
                channel.number(),
                control == null ? "no control yet" : control.name(),
                note(channel, control),
                positions(channel, names));
    }

    private static String note(Channel channel, @Nullable Control control) {
        String mixed = control != null && control.kind() == Control.Kind.MIXED ? "two switches mixed" : "";
        String pinned = channel.pinned() ? "pinned" : "";
        String shared = channel.carries().size() > 1
                ? "shared by " + RadioNames.count(channel.carries().size(), "function")
                : "";
        return String.join(
                ", ",
                List.of(pinned, shared, mixed).stream()
                        .filter(word -> !word.isEmpty())
                        .toList());
    }

    private static List<Position> positions(Channel channel, RadioNames names) {
        if (channel.carries().isEmpty()) {
            return List.of(new Position("", "nothing yet"));
        }
        int count = channel.carries().get(0).states().size();
        if (count == 0) {
            return List.of(new Position("", names.functions(channel.functions())));
        }
        return IntStream.range(0, count)
                .mapToObj(at -> new Position(String.valueOf(at + 1), commands(channel.carries(), at, names)))
                .toList();
    }

    private static String commands(List<Carried> carries, int at, RadioNames names) {
        return String.join(
                ", ",
                carries.stream()
                        .map(carried -> names.function(carried.function()) + " "
                                + carried.states().get(at))
                        .toList());
    }
}
