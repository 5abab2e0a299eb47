package dev.ledgerwing.core.power.energy;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.battery.PackFigures;
import dev.ledgerwing.core.power.network.NetworkSolution;
import java.util.List;
import java.util.Objects;

/** What one pack gives through every flight that is thought of. */
record PackUse(Build build, PowerSource battery) {

    /** Whether it gives anything on this flight. */
    boolean isDrawnFrom(List<NetworkSolution> flight) {
        return flight.stream().anyMatch(solution -> solution.amperes(battery.code()) > 0);
    }

    /** On the flight, among those on which it gives anything, that asks most of it. */
    PackEndurance worst(List<List<NetworkSolution>> flights) {
        Double usableMah =
                PackFigures.of(Objects.requireNonNull(battery.pack())).usableMah();
        if (usableMah == null) {
            return new PackEndurance(battery, null, false);
        }
        List<PackTime> times = flights.stream()
                .filter(this::isDrawnFrom)
                .map(flight -> time(usableMah, flight))
                .toList();
        return new PackEndurance(
                battery,
                times.stream().mapToDouble(PackTime::minutes).min().orElse(Double.POSITIVE_INFINITY),
                times.stream().allMatch(PackTime::holdsFixedPhases));
    }

    private PackTime time(double usableMah, List<NetworkSolution> flight) {
        return new PackTime(
                usableMah,
                flight.stream().map(this::leg).toList(),
                build.power().rules().landingReserveInForce());
    }

    private PackLeg leg(NetworkSolution solution) {
        Phase phase = solution.occasion().phase();
        Double minutes = phase == null ? null : phase.minutes();
        return new PackLeg(
                minutes == null ? 0 : minutes, phase == null || phase.stretch(), solution.amperes(battery.code()));
    }
}
