package dev.ledgerwing.core.build;

import java.util.List;

/**
 * What one phase asks of a switched function.
 *
 * @param mustSelect states that the pilot must be able to choose then; none = nothing is asked
 * @param mayHave states that do no harm then; none = any
 */
public record Demand(List<String> mustSelect, List<String> mayHave) {

    /** Nothing asked, nothing forbidden. */
    public static final Demand OPEN = new Demand(List.of(), List.of());

    public Demand {
        mustSelect = List.copyOf(mustSelect);
        mayHave = List.copyOf(mayHave);
    }

    public static Demand select(String... states) {
        return new Demand(List.of(states), List.of());
    }

    /** Whether a state does no harm. */
    public boolean allows(String state) {
        return mayHave.isEmpty() || mayHave.contains(state);
    }
}
