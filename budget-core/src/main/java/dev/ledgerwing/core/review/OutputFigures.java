package dev.ledgerwing.core.review;

import dev.ledgerwing.core.outputs.BoardComparison;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.outputs.PortKind;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The figures of outputs and ports under their names; what the board aboard has is left out where it is not known. */
final class OutputFigures {

    private OutputFigures() {}

    static Map<String, Double> of(OutputStatement statement) {
        Map<String, Double> figures = new LinkedHashMap<>();
        if (statement.isBlank()) {
            return figures;
        }
        for (PortKind kind : PortKind.values()) {
            figures.put(name(kind, "Needed"), (double) statement.need().need(kind));
            statement
                    .aboard()
                    .map(aboard -> aboard.port(kind).supply())
                    .ifPresent(supply -> figures.put(name(kind, "Available"), supply.doubleValue()));
        }
        figures.put("outputs.undriven", (double) statement.undriven().size());
        statement
                .aboard()
                .map(BoardComparison::clashes)
                .ifPresent(clashes -> figures.put("outputs.addressClashes", (double) clashes.size()));
        return figures;
    }

    /** {@code outputs.needed}, {@code outputs.serialNeeded}; of buses the supply is how many buses there are. */
    private static String name(PortKind kind, String ending) {
        return switch (kind) {
            case OUTPUT -> "outputs." + ending.toLowerCase(Locale.ROOT);
            case SERIAL_PORT -> "outputs.serial" + ending;
            case BUS_ADDRESS -> "outputs.address" + ending;
            case CAN_NODE -> "outputs.can" + ending;
            case ANALOG_INPUT -> "outputs.analog" + ending;
        };
    }
}
