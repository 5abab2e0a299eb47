package dev.ledgerwing.core.build;

import java.util.List;

/**
 * Something the pilot commands.
 *
 * @param states the states of a switched function in order; none for a proportional one
 * @param irreversible cannot be taken back, as a release cannot
 */
public record RadioFunction(
        String code, String name, Kind kind, List<String> states, Criticality criticality, boolean irreversible)
        implements Element {

    /** How it is commanded. */
    public enum Kind {
        PROPORTIONAL,
        SWITCHED
    }

    /** What hangs on it: the flight itself, the errand, or comfort. */
    public enum Criticality {
        FLIGHT,
        MISSION,
        CONVENIENCE
    }

    public RadioFunction {
        states = List.copyOf(states);
        Check.slug("code", code);
        Check.name("name", name);
        states.forEach(state -> Check.name("states", state));
        Check.require(
                (kind == Kind.SWITCHED) == (states.size() >= 2),
                "states must be two or more for a SWITCHED function and none for a PROPORTIONAL one, were "
                        + states.size());
    }

    @Override
    public String id() {
        return code;
    }
}
