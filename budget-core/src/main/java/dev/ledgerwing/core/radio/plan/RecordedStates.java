package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The states along the pulse that the record has for a group already. */
final class RecordedStates {

    private RecordedStates() {}

    /** By member and position; null where no recorded channel carries exactly these, or not so that the rule holds. */
    static int @Nullable [][] of(ChannelProblem problem, List<RadioFunction> functions, Group group, Layout layout) {
        for (Channel channel : problem.radio().channels()) {
            if (isOf(channel, functions, layout)) {
                int[][] states = of(channel, functions);
                if (GroupSearch.carries(group, layout, states)) {
                    return states;
                }
            }
        }
        return null;
    }

    /** By member and position, as they are recorded. */
    static int[][] of(Channel channel, List<RadioFunction> functions) {
        return functions.stream()
                .map(function -> states(channel, function).stream()
                        .mapToInt(function.states()::indexOf)
                        .toArray())
                .toArray(int[][]::new);
    }

    private static boolean isOf(Channel channel, List<RadioFunction> functions, Layout layout) {
        return channel.carries().size() == functions.size()
                && functions.stream().allMatch(function -> {
                    List<String> states = states(channel, function);
                    return states.size() == layout.positions()
                            && function.states().containsAll(states);
                });
    }

    private static List<String> states(Channel channel, RadioFunction function) {
        return channel.carries().stream()
                .filter(each -> each.function().equals(function.code()))
                .findFirst()
                .map(Carried::states)
                .orElse(List.of());
    }
}
