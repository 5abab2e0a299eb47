package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.PartLine;
import java.util.List;
import java.util.stream.Stream;

/**
 * A part that needs outputs and has not got them all.
 *
 * @param pieces how many of its pieces nothing drives
 * @param outputs how many outputs are missing; fewer than pieces where several share a Y-lead
 */
public record Undriven(PartLine line, int pieces, int outputs) {

    static List<Undriven> of(Build build) {
        return PortTally.of(build).users(PortKind.OUTPUT).stream()
                .map(line -> of(build, line))
                .filter(each -> each.pieces() > 0 || each.outputs() > 0)
                .toList();
    }

    /** More outputs than pieces, as for a part of two plugs, are missing as long as there are fewer than it needs. */
    private static Undriven of(Build build, PartLine line) {
        int driven = drives(build, line).mapToInt(Driven::pieces).sum();
        int outputs = (int) build.outputs().assignments().stream()
                .filter(output -> drives(output, line))
                .count();
        return new Undriven(
                line,
                Math.max(0, line.quantity() - driven),
                Math.max(0, line.needs().outputs() - outputs));
    }

    private static Stream<Driven> drives(Build build, PartLine line) {
        return build.outputs().assignments().stream()
                .flatMap(output -> output.drives().stream())
                .filter(driven -> driven.line().equals(line.id()));
    }

    private static boolean drives(Output output, PartLine line) {
        return output.drives().stream().anyMatch(driven -> driven.line().equals(line.id()));
    }
}
