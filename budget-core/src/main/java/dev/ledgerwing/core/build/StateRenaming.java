package dev.ledgerwing.core.build;

import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Other names for states of one function. What is said of a state stays said of it under its new name.
 *
 * @param names new names by old ones; a state that is not among them keeps its name
 */
public record StateRenaming(Map<String, String> names) {

    public static final StateRenaming NONE = new StateRenaming(Map.of());

    public StateRenaming {
        names = Map.copyOf(names);
    }

    public String of(String state) {
        return names.getOrDefault(state, state);
    }

    private List<String> of(List<String> states) {
        return states.stream().map(this::of).toList();
    }

    /** What the phases ask, in the new names. */
    public Map<String, Demand> of(Map<String, Demand> demandByPhase) {
        Map<String, Demand> renamed = new TreeMap<>();
        demandByPhase.forEach(
                (phase, demand) -> renamed.put(phase, new Demand(of(demand.mustSelect()), of(demand.mayHave()))));
        return renamed;
    }

    Carried of(Carried carried) {
        String preset = carried.presetState();
        return new Carried(carried.function(), of(carried.states()), preset == null ? null : of(preset));
    }

    FunctionState of(FunctionState given) {
        return new FunctionState(given.function(), of(given.state()));
    }
}
