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
            int[][] states = channel.carries().size() == functions.size() ? states(channel, functions, layout) : null;
            if (states != null && GroupSearch.carries(group, layout, states)) {
                return states;
            }
        }
        return null;
    }

    /** As they are recorded; null where a function or a state is another, or the positions are not as many. */
    static int @Nullable [][] states(Channel channel, List<RadioFunction> functions, Layout layout) {
        int[][] states = new int[functions.size()][];
        for (int i = 0; i < states.length; i++) {
            RadioFunction function = functions.get(i);
            Carried carried = channel.carries().stream()
                    .filter(each -> each.function().equals(function.code()))
                    .findFirst()
                    .orElse(null);
            if (carried == null
                    || carried.states().size() != layout.positions()
                    || !function.states().containsAll(carried.states())) {
                return null;
            }
            states[i] = carried.states().stream()
                    .mapToInt(state -> function.states().indexOf(state))
                    .toArray();
        }
        return states;
    }
}
