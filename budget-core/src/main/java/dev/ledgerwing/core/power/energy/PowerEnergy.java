package dev.ledgerwing.core.power.energy;

import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.power.network.NetworkSolution;
import dev.ledgerwing.core.power.network.PowerNetwork;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is drawn phase by phase, and how long the packs last.
 *
 * @param phases one for each phase in the order of the record; one for all the time where it has none
 */
public record PowerEnergy(List<PhaseEnergy> phases, Endurance endurance) {

    public PowerEnergy {
        phases = List.copyOf(phases);
    }

    public static PowerEnergy of(PowerNetwork network) {
        StandIns standIns = new StandIns(network);
        Endurance endurance = Endurance.of(network, standIns);
        return new PowerEnergy(
                standIns.normal().stream()
                        .map(solution -> PhaseEnergy.of(network, solution, minutes(solution, endurance)))
                        .toList(),
                endurance);
    }

    private static @Nullable Double minutes(NetworkSolution solution, Endurance endurance) {
        Phase phase = solution.occasion().phase();
        return phase == null || phase.stretch() ? endurance.stretchMinutes() : phase.minutes();
    }
}
