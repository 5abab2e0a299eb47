package dev.ledgerwing.core.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.power.network.ElementLoad;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.PowerNetwork;
import dev.ledgerwing.core.power.network.SourceLoad;
import dev.ledgerwing.core.power.wire.WiringMass;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Everything there is to say about the supply of a build: one object for page, sheet and review. */
public record PowerStatement(NetworkStatement network, WiringMass wiring) {

    public static PowerStatement of(Build build) {
        return new PowerStatement(NetworkStatement.of(PowerNetwork.of(build)), WiringMass.of(build));
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
                        network.sources().stream().map(SourceLoad::marginPercent))
                .filter(Objects::nonNull)
                .min(Double::compare);
    }
}
