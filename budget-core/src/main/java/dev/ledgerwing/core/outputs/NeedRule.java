package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Stream;

/** Whether the parts say what they need, and the outputs drive no more pieces than there are. */
record NeedRule(OutputStatement statement) {

    static final String NEEDS = "outputs.needs";
    static final String PIECES = "outputs.pieces";

    Stream<Finding> findings() {
        return Stream.of(nothing(), silentServos(), tooManyPieces()).flatMap(findings -> findings);
    }

    private Stream<Finding> nothing() {
        return statement.need().lines().isEmpty()
                ? Stream.of(OutputFindings.about(
                        NEEDS,
                        Verdict.UNKNOWN,
                        "Needs",
                        "No part says which outputs and ports it needs: enter them with the parts."))
                : Stream.empty();
    }

    /** A servo without an output does not move: that none is asked for is more likely forgotten than meant. */
    private Stream<Finding> silentServos() {
        List<String> absent = statement.build().designCase().absent();
        return statement.build().lines().stream()
                .filter(line -> line.category() == Category.SERVO && !absent.contains(line.id()))
                .filter(line -> line.needs().outputs() == 0 && driven(line) == 0)
                .map(line -> OutputFindings.about(
                        NEEDS,
                        Verdict.UNKNOWN,
                        line.name(),
                        line.id(),
                        "“" + line.name() + "” does not say how many outputs it needs, and nothing drives it."));
    }

    /** Where every piece has one plug at most, nobody can plug in more pieces than there are. */
    private Stream<Finding> tooManyPieces() {
        return statement.build().lines().stream()
                .filter(line -> line.needs().outputs() <= line.quantity() && driven(line) > line.quantity())
                .map(line -> OutputFindings.about(
                        PIECES,
                        Verdict.BREAKS,
                        line.name(),
                        line.id(),
                        "The outputs drive " + driven(line) + " pieces of “" + line.name() + "”, and there "
                                + (line.quantity() == 1 ? "is 1." : "are " + line.quantity() + ".")));
    }

    private int driven(PartLine line) {
        return statement.build().outputs().assignments().stream()
                .flatMap(output -> output.drives().stream())
                .filter(driven -> driven.line().equals(line.id()))
                .mapToInt(Driven::pieces)
                .sum();
    }
}
