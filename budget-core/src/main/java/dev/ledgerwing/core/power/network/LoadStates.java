package dev.ledgerwing.core.power.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds the voltages that every load gets. */
record LoadStates(PowerNetwork network, Solutions solutions, Gaps gaps) {

    /** In the order of the record; those that hang on no rail are not in it. */
    List<LoadState> all() {
        List<RailLoad> onRails =
                network.loads().stream().filter(load -> load.rail() != null).toList();
        List<List<LoadFlow>> normal = flows(solutions.normal());
        List<List<LoadFlow>> every = flows(solutions.every());
        List<List<LoadFlow>> idle = flows(solutions.idle());
        List<LoadState> states = new ArrayList<>();
        for (int i = 0; i < onRails.size(); i++) {
            RailLoad load = onRails.get(i);
            String rail = Objects.requireNonNull(load.load().rail());
            boolean isSolved = !network.isUnsolved(rail);
            states.add(new LoadState(
                    load,
                    isSolved ? lowest(running(normal, i)) : null,
                    isSolved ? lowest(running(every, i)) : null,
                    isSolved ? highest(running(idle, i)) : null,
                    running(every, i).mapToDouble(LoadFlow::amperes).max().orElse(0),
                    !gaps.volts().contains(rail)));
        }
        return states;
    }

    private static List<List<LoadFlow>> flows(List<NetworkSolution> solutions) {
        return solutions.stream().map(NetworkSolution::loads).toList();
    }

    private static Stream<LoadFlow> running(List<List<LoadFlow>> flows, int load) {
        return flows.stream().map(each -> each.get(load)).filter(LoadFlow::runs);
    }

    private static @Nullable Double lowest(Stream<LoadFlow> flows) {
        return flows.map(LoadFlow::atLoadV).min(Double::compare).orElse(null);
    }

    private static @Nullable Double highest(Stream<LoadFlow> flows) {
        return flows.map(LoadFlow::atLoadV).max(Double::compare).orElse(null);
    }
}
