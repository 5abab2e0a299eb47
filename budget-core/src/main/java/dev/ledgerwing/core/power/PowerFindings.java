package dev.ledgerwing.core.power;

import dev.ledgerwing.core.power.charging.ChargingFindings;
import dev.ledgerwing.core.power.energy.EnduranceFindings;
import dev.ledgerwing.core.power.failure.FailureFindings;
import dev.ledgerwing.core.power.network.NetworkFindings;
import dev.ledgerwing.core.power.solar.DayFindings;
import dev.ledgerwing.core.power.wire.WiringFindings;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import java.util.List;
import java.util.stream.Stream;

/** What the power budget has to say about a build, rule by rule. */
public final class PowerFindings {

    private PowerFindings() {}

    /** Every finding, its sentences in the units of {@code figures}; where nothing is recorded, one that says where to begin. */
    public static List<Finding> of(PowerStatement statement, Figures figures) {
        List<Finding> network = NetworkFindings.of(statement.network());
        if (statement.isBlank()) {
            return network;
        }
        return Stream.of(
                        network.stream(),
                        FailureFindings.of(statement.failures()).stream(),
                        EnduranceFindings.of(
                                statement.build(), statement.energy().endurance())
                                .stream(),
                        ChargingFindings.of(statement.network(), statement.charging()).stream(),
                        day(statement),
                        WiringFindings.of(statement.build(), figures).stream())
                .flatMap(stream -> stream)
                .toList();
    }

    private static Stream<Finding> day(PowerStatement statement) {
        Double wantedMinutes = statement.build().power().rules().wantedMinutes();
        return Stream.ofNullable(statement.day()).map(day -> DayFindings.of(day, wantedMinutes));
    }
}
