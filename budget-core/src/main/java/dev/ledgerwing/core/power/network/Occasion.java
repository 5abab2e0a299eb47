package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PowerSource;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A phase as the supply sees it: what is aboard, and what runs.
 *
 * @param phase null = all the time, of a record without phases
 * @param loadCase that of the phase, or else the design case
 */
public record Occasion(@Nullable Phase phase, LoadCase loadCase) {

    /** One for each phase; one for all the time where the record has none. */
    static List<Occasion> of(Build build) {
        if (build.phases().isEmpty()) {
            return List.of(new Occasion(null, build.designCase()));
        }
        return build.phases().stream()
                .map(phase -> new Occasion(phase, caseOf(build, phase)))
                .toList();
    }

    private static LoadCase caseOf(Build build, Phase phase) {
        return build.loadCases().stream()
                .filter(each -> each.code().equals(phase.loadCase()))
                .findFirst()
                .orElseGet(build::designCase);
    }

    public String name() {
        return phase == null ? "all the time" : phase.name();
    }

    public boolean isAboard(PowerSource source) {
        String part = source.part();
        return part == null || isAboard(part);
    }

    private boolean isAboard(String line) {
        return !loadCase.absent().contains(line);
    }

    /** Share of the phase that a load runs, 0 to 1; 0 when it stays at home. */
    public double duty(RailLoad load) {
        return isAboard(load.line().id()) ? duty(load.load()) : 0;
    }

    private double duty(ElectricalLoad load) {
        return phase == null ? 1 : load.dutyByPhase().getOrDefault(phase.code(), 1.0);
    }
}
