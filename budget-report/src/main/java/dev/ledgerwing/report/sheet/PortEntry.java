package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.outputs.OutputStatement;
import java.util.List;

/** What one part needs of the flight controller besides outputs; empty = nothing. */
public record PortEntry(String part, String serial, String addresses, String can, String analog) {

    static List<PortEntry> of(OutputStatement statement) {
        return statement.need().lines().stream()
                .filter(PortEntry::needsPorts)
                .map(PortEntry::of)
                .toList();
    }

    private static boolean needsPorts(PartLine line) {
        PortNeeds needs = line.needs();
        return needs.serialPorts() + needs.canNodes() + needs.analogInputs() > 0
                || !needs.i2cAddresses().isEmpty();
    }

    private static PortEntry of(PartLine line) {
        PortNeeds needs = line.needs();
        return new PortEntry(
                (line.quantity() == 1 ? "" : line.quantity() + " × ") + line.name(),
                count(needs.serialPorts()),
                String.join(", ", needs.i2cAddresses()),
                count(needs.canNodes()),
                count(needs.analogInputs()));
    }

    private static String count(int count) {
        return count == 0 ? "" : String.valueOf(count);
    }
}
