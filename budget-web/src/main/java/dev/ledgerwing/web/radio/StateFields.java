package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.web.forms.Entries;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the names of the states of a function, and says at the field why they cannot be so. */
final class StateFields {

    static final int LONGEST_STATE = 200;
    private static final int MOST_STATES = 8;

    private StateFields() {}

    static StateNames states(String row, Kind kind, Entries entries, @Nullable RadioFunction was) {
        String field = row + ".states";
        List<String> had = was == null ? List.of() : was.states();
        StateNames states = StateNames.of(entries.typed().text(field), had);
        if (kind == Kind.PROPORTIONAL && !states.typed().isEmpty()) {
            entries.trouble(field, "A proportional function has no states: leave this empty, or make it switched.");
        } else if (kind == Kind.SWITCHED) {
            check(field, states.typed(), entries);
        }
        return states;
    }

    private static void check(String field, List<String> states, Entries entries) {
        if (states.size() < 2) {
            entries.trouble(field, "Please name its states in order, two at least: off, on.");
        } else if (states.size() > MOST_STATES) {
            entries.trouble(
                    field, "A function has at most " + MOST_STATES + " states, here are " + states.size() + ".");
        } else if (new HashSet<>(states).size() < states.size()) {
            entries.trouble(field, "Two states have the same name.");
        } else if (states.stream().anyMatch(state -> state.length() > LONGEST_STATE)) {
            entries.trouble(field, "The name of a state has at most " + LONGEST_STATE + " characters.");
        } else if (!states.stream().allMatch(Entries::isPlain)) {
            entries.trouble(field, "Please leave out invisible characters.");
        }
    }

    /** A sentence at the field for every state that is to go and that the radio still speaks of. */
    static void refuseWhatIsMentioned(String field, RadioFunction was, List<String> gone, Entries entries, Build seen) {
        for (String state : gone) {
            String mentions = StateMentions.of(was, state, seen);
            if (!mentions.isEmpty()) {
                entries.trouble(field, "“" + state + "” is still used by " + mentions + ". Take it out there first.");
            }
        }
    }
}
