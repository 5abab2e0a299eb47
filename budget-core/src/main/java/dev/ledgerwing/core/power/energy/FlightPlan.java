package dev.ledgerwing.core.power.energy;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Phase;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the phases of a record fill a flight.
 *
 * @param hasPhases false = everything is on all the time, and that stretches
 * @param fixedMinutes all phases together that do not stretch; one of unknown length counts as nothing
 * @param stretching the phase that stretches; null = none
 */
public record FlightPlan(
        boolean hasPhases, double fixedMinutes, @Nullable Phase stretching) {

    static FlightPlan of(Build build) {
        List<Phase> phases = build.phases();
        return new FlightPlan(
                !phases.isEmpty(),
                phases.stream()
                        .filter(phase -> !phase.stretch())
                        .mapToDouble(FlightPlan::minutes)
                        .sum(),
                phases.stream().filter(Phase::stretch).findFirst().orElse(null));
    }

    private static double minutes(Phase phase) {
        Double minutes = phase.minutes();
        return minutes == null ? 0 : minutes;
    }

    /** Whether anything takes up what the packs have left. */
    public boolean stretches() {
        return !hasPhases || stretching != null;
    }
}
