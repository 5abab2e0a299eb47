package dev.ledgerwing.core.power.energy;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.network.NetworkSolution;
import dev.ledgerwing.core.power.network.PowerNetwork;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How long the packs let the airframe fly: fixed phases first, the phase that stretches takes the rest, minutes of it are kept for the
 * landing. The shortest of all packs that something hangs on; of packs that stand in for each other on a redundant rail, the longest alone.
 * The sun is not counted in it.
 *
 * @param packs every pack that gives anything
 * @param limiting the pack that is spent first; null = none, or not known
 * @param missing what must be entered before it is known, in words
 * @param collapsed whether a supply gives way on the flight, so that nothing can be said
 */
public record Endurance(
        List<PackEndurance> packs,
        @Nullable PackEndurance limiting,
        FlightPlan plan,
        List<String> missing,
        boolean collapsed) {

    public Endurance {
        packs = List.copyOf(packs);
        missing = List.copyOf(missing);
    }

    /** A pack that gives anything, and how long it lets the flight last. */
    private record Used(PackUse use, PackEndurance endurance) {

        double minutes() {
            return known(endurance);
        }
    }

    static Endurance of(PowerNetwork network, StandIns standIns) {
        List<List<NetworkSolution>> flights = standIns.flights();
        List<Used> packs = network.sources().stream()
                .filter(source -> source.kind() == PowerSource.Kind.BATTERY)
                .map(battery -> new PackUse(network.build(), battery))
                .filter(use -> flights.stream().anyMatch(use::isDrawnFrom))
                .map(use -> new Used(use, use.worst(flights)))
                .toList();
        return new Endurance(
                packs.stream().map(Used::endurance).toList(),
                limiting(packs, flights),
                FlightPlan.of(network.build()),
                new EnergyGaps(network, standIns.normal())
                        .words(packs.stream().map(each -> each.use().battery()).toList()),
                flights.stream()
                        .flatMap(List::stream)
                        .anyMatch(solution -> !solution.collapsed().isEmpty()));
    }

    /** On each flight the pack that is spent first; of these the one that lasts longest. */
    private static @Nullable PackEndurance limiting(List<Used> packs, List<List<NetworkSolution>> flights) {
        return flights.stream()
                .flatMap(flight -> first(packs, flight).stream())
                .max(Comparator.comparingDouble(Used::minutes))
                .map(Used::endurance)
                .orElse(null);
    }

    private static Optional<Used> first(List<Used> packs, List<NetworkSolution> flight) {
        return packs.stream()
                .filter(pack -> pack.use().isDrawnFrom(flight))
                .min(Comparator.comparingDouble(Used::minutes));
    }

    /** A pack of which nothing is known limits from the start. */
    private static double known(PackEndurance pack) {
        Double minutes = pack.minutes();
        return minutes == null ? 0 : minutes;
    }

    /** The whole flight; null = not known, or nothing limits it. */
    public @Nullable Double minutes() {
        Double minutes = limiting == null ? null : limiting.minutes();
        return !isKnown() || minutes == null || minutes.isInfinite() ? null : minutes;
    }

    public boolean isKnown() {
        return missing.isEmpty() && !collapsed;
    }

    /** What the phase that stretches gets of it; null = none, or not known. */
    public @Nullable Double stretchMinutes() {
        Double minutes = minutes();
        return minutes == null || !plan.stretches() ? null : (Double) Math.max(0, minutes - plan.fixedMinutes());
    }

    /** Whether the packs hold the fixed phases and the landing reserve; false also where that is not known. */
    public boolean holdsFixedPhases() {
        return isKnown() && (limiting == null || limiting.holdsFixedPhases());
    }
}
