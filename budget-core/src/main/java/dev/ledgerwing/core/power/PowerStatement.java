package dev.ledgerwing.core.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.power.charging.Charging;
import dev.ledgerwing.core.power.energy.PowerEnergy;
import dev.ledgerwing.core.power.failure.FailureTable;
import dev.ledgerwing.core.power.network.ElementLoad;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.PowerNetwork;
import dev.ledgerwing.core.power.network.SourceLoad;
import dev.ledgerwing.core.power.solar.DayBalance;
import dev.ledgerwing.core.power.wire.WiringMass;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Everything there is to say about the supply of a build: one object for page, sheet and review.
 *
 * @param network with nothing out of order, and {@code failures} with one thing out of order at a time
 * @param day in the sun; null = none is looked at
 */
public record PowerStatement(
        NetworkStatement network,
        FailureTable failures,
        PowerEnergy energy,
        Charging charging,
        WiringMass wiring,
        @Nullable DayBalance day) {

    public static PowerStatement of(Build build) {
        NetworkStatement network = NetworkStatement.of(PowerNetwork.of(build));
        PowerEnergy energy = PowerEnergy.of(network.network());
        FailureTable failures = FailureTable.of(network);
        Charging charging = Charging.of(build);
        return new PowerStatement(
                network,
                failures,
                energy,
                charging,
                WiringMass.of(build),
                FlownDay.of(network, failures, charging, energy).orElse(null));
    }

    public Build build() {
        return network.network().build();
    }

    /** Neither sources nor rails nor feeds are recorded. */
    public boolean isBlank() {
        return network.network().isBlank();
    }

    /** Of the element or source that is nearest to its rating, or furthest beyond it; empty when none is known. */
    public Optional<Double> worstMarginPercent() {
        return Stream.concat(
                        network.elements().stream().map(ElementLoad::marginPercent),
                        network.sources().stream().filter(SourceLoad::isUsed).map(SourceLoad::marginPercent))
                .filter(Objects::nonNull)
                .min(Double::compare);
    }
}
