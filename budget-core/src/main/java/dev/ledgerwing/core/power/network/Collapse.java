package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.PowerSource;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A source that cannot give what is asked of it: there is no voltage at which everything behind it could run.
 *
 * @param solution the mildest in which it is so: fullest pack, least load
 */
public record Collapse(PowerSource source, NetworkSolution solution) {

    /** One for each source that collapses at all. */
    static List<Collapse> all(PowerNetwork network, Solutions solutions) {
        return network.sources().stream()
                .flatMap(source -> of(source, solutions).stream())
                .toList();
    }

    private static Optional<Collapse> of(PowerSource source, Solutions solutions) {
        return Stream.concat(solutions.normal().stream(), solutions.every().stream())
                .filter(solution -> solution.hasCollapsed(source.code()))
                .min(Comparator.comparing(NetworkSolution::charge).thenComparing(NetworkSolution::level))
                .map(solution -> new Collapse(source, solution));
    }
}
