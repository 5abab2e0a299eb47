package dev.ledgerwing.core.build;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A combination of states that the team has given up, so that functions may share a channel.
 *
 * @param phases codes of the phases in which it is given up; none = in every phase
 * @param by who gave it up
 * @param why what for
 */
public record NotNeeded(String id, List<String> phases, List<FunctionState> states, String by, String why)
        implements Element {

    /** A function in one of its states. */
    public record FunctionState(String function, String state) {

        public FunctionState {
            Check.slug("function", function);
            Check.name("state", state);
        }
    }

    public NotNeeded {
        phases = List.copyOf(phases);
        states = List.copyOf(states);
        Check.id("id", id);
        Check.name("by", by);
        Check.name("why", why);
        Check.require(
                states.size() >= 2
                        && states.stream()
                                        .map(FunctionState::function)
                                        .distinct()
                                        .count()
                                == states.size(),
                "states must name two or more different functions, each in one state");
    }

    @Override
    public String name() {
        return states.stream().map(FunctionState::state).collect(Collectors.joining(" with "));
    }

    /** Whether it holds in a phase. */
    public boolean holdsIn(String phase) {
        return phases.isEmpty() || phases.contains(phase);
    }
}
