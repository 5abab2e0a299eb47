package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.verdict.Finding;
import java.util.List;
import java.util.stream.Stream;

/** What the network has to say with nothing out of order, rule by rule. */
public final class NetworkFindings {

    private NetworkFindings() {}

    /** Where nothing is recorded, one finding that says where to begin. */
    public static List<Finding> of(NetworkStatement statement) {
        StructureRule structure = new StructureRule(statement);
        if (statement.network().isBlank()) {
            return List.of(structure.blank());
        }
        return Stream.of(
                        structure.findings(),
                        new CurrentRule(statement).findings(),
                        new RegulatorRule(statement).findings(),
                        new RailRule(statement).findings(),
                        new BackFeedRule(statement).findings(),
                        new WireDropRule(statement).findings(),
                        new ProtectionRule(statement).findings(),
                        new LeadRule(statement).findings(),
                        new GapRule(statement).findings())
                .flatMap(stream -> stream)
                .toList();
    }
}
