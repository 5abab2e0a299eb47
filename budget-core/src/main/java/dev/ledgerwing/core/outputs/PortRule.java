package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Objects;
import java.util.stream.Stream;

/** Whether the board aboard has as many connections of every kind as the parts need, and addresses that do not clash. */
record PortRule(OutputStatement statement) {

    static final String ADDRESS = "outputs.address";

    Stream<Finding> findings() {
        Board board = Objects.requireNonNull(statement.fitted());
        BoardComparison aboard = statement.aboard().orElseThrow();
        return Stream.concat(
                aboard.ports().stream()
                        .filter(port -> port.need() > 0)
                        .filter(port -> port.kind() == PortKind.OUTPUT || port.verdict() != Verdict.HOLDS)
                        .map(port -> of(board, port)),
                aboard.clashes().stream()
                        .filter(clash -> clash.buses() > 0)
                        .map(clash -> OutputFindings.about(
                                ADDRESS, Verdict.BREAKS, "Address " + clash.address(), clash.sentence())));
    }

    private static Finding of(Board board, PortRow port) {
        Integer supply = port.supply();
        String subject = port.kind().plural();
        String name = "“" + board.name() + "”";
        if (supply == null) {
            return OutputFindings.about(
                    OutputFindings.PORTS,
                    Verdict.UNKNOWN,
                    subject,
                    "The parts need " + port.kind().counted(port.need()) + ", and how many " + name
                            + " has is not known.");
        }
        return OutputFindings.counted(
                OutputFindings.PORTS, port.verdict(), subject, port.need(), supply, sentence(name, port, supply));
    }

    private static String sentence(String name, PortRow port, int supply) {
        String need = "The parts need " + port.kind().counted(port.need());
        if (port.kind().isBus()) {
            return need + ", and " + name + " has no such bus.";
        }
        String has = need + ", " + name + " has " + supply;
        return switch (port.verdict()) {
            case BREAKS -> has + ": " + port.shortage() + " short.";
            case TIGHT -> has + ": none is left.";
            default -> has + ".";
        };
    }
}
