package dev.ledgerwing.core.power;

import dev.ledgerwing.core.power.network.NetworkFindings;
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
        return Stream.concat(network.stream(), WiringFindings.of(statement.build(), figures).stream())
                .toList();
    }
}
