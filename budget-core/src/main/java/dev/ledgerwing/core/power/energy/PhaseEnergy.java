package dev.ledgerwing.core.power.energy;

import dev.ledgerwing.core.power.network.NetworkSolution;
import dev.ledgerwing.core.power.network.Occasion;
import dev.ledgerwing.core.power.network.PowerNetwork;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is drawn in one phase: typical currents times the share of the phase that they run, packs at nominal voltage.
 *
 * @param minutes how long the phase lasts, or, for the one that stretches, how long the packs let it last; null = not known
 * @param sources what each source gives, its inner losses left out
 * @param rails what the loads on each rail take there, their leads included
 */
public record PhaseEnergy(
        Occasion occasion, @Nullable Double minutes, List<EnergyShare> sources, List<EnergyShare> rails) {

    public PhaseEnergy {
        sources = List.copyOf(sources);
        rails = List.copyOf(rails);
    }

    static PhaseEnergy of(PowerNetwork network, NetworkSolution solution, @Nullable Double minutes) {
        return new PhaseEnergy(
                solution.occasion(),
                minutes,
                network.sources().stream()
                        .map(source -> share(solution, source.code(), source.name(), solution.amperes(source.code())))
                        .toList(),
                network.rails().stream()
                        .map(rail -> share(solution, rail.code(), rail.name(), onRail(solution, rail.code())))
                        .toList());
    }

    private static EnergyShare share(NetworkSolution solution, String code, String name, double meanA) {
        return new EnergyShare(code, name, meanA, meanA * solution.volts(code));
    }

    private static double onRail(NetworkSolution solution, String rail) {
        return solution.loads().stream()
                .filter(flow -> rail.equals(flow.load().load().rail()))
                .mapToDouble(flow -> flow.amperes())
                .sum();
    }

    /** Watts that all sources give. */
    public double meanW() {
        return sum(sources.stream());
    }

    /** Watts lost between the sources and the rails: in wires, diodes and regulators. */
    public double lossW() {
        return meanW() - sum(rails.stream());
    }

    private static double sum(Stream<EnergyShare> shares) {
        return shares.mapToDouble(EnergyShare::meanW).sum();
    }
}
