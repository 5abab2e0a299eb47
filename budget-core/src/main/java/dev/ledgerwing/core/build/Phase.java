package dev.ledgerwing.core.build;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of a flight in which the same things run.
 *
 * @param minutes how long it lasts; null = as long as it takes
 * @param stretch the one phase that takes up what the battery has left
 * @param loadCase code of the load case flown then
 * @param next codes of the phases that may follow
 */
public record Phase(
        String code,
        String name,
        @Nullable Double minutes,
        boolean stretch,
        @Nullable String loadCase,
        List<String> next,
        boolean chargingPossible)
        implements Element {

    public Phase {
        next = List.copyOf(next);
        Check.slug("code", code);
        Check.name("name", name);
        Check.within("minutes", minutes, 0, 100_000, " min");
    }

    @Override
    public String id() {
        return code;
    }

    public Phase withNext(List<String> changed) {
        return new Phase(code, name, minutes, stretch, loadCase, changed, chargingPossible);
    }
}
