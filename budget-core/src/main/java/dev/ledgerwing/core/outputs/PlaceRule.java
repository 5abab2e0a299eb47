package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Whether every part that needs an output hangs on one, and nothing hangs where something else does. */
record PlaceRule(OutputStatement statement) {

    static final String UNDRIVEN = "outputs.undriven";
    static final String TWICE = "outputs.twice";
    static final String NUMBER = "outputs.number";
    static final String IDLE = "outputs.idle";
    static final String Y_LEAD = "outputs.y-lead";
    static final String PLUGS = "outputs.plugs";
    static final String BANKS = "outputs.banks";

    Stream<Finding> findings() {
        return Stream.of(
                        statement.undriven().stream().map(PlaceRule::undriven),
                        statement.doubleUse().entrySet().stream()
                                .map(each -> twice(each.getKey(), each.getValue().stream())),
                        statement.outputs().stream().flatMap(this::of),
                        banks(),
                        plugs())
                .flatMap(findings -> findings);
    }

    private static Finding undriven(Undriven missing) {
        String name = "“" + missing.line().name() + "”";
        int quantity = missing.line().quantity();
        String sentence;
        if (missing.pieces() > 0) {
            sentence = quantity == 1
                    ? "Nothing drives " + name + "."
                    : "Nothing drives "
                            + (missing.pieces() == quantity
                                    ? "any of the " + quantity + " pieces of "
                                    : missing.pieces() + " of " + quantity + " pieces of ")
                            + name + ".";
        } else {
            sentence = name + " needs " + PortKind.OUTPUT.counted(missing.outputs()) + " more than it has.";
        }
        return OutputFindings.about(
                UNDRIVEN, Verdict.BREAKS, missing.line().name(), missing.line().id(), sentence);
    }

    private static Finding twice(int number, Stream<Output> outputs) {
        List<String> names = outputs.map(output -> "“" + output.name() + "”").toList();
        int last = names.size() - 1;
        return OutputFindings.about(
                TWICE,
                Verdict.BREAKS,
                "Output " + number,
                "Output " + number + " is used " + (names.size() == 2 ? "twice" : names.size() + " times") + ": by "
                        + String.join(", ", names.subList(0, last)) + " and " + names.get(last) + ".");
    }

    private Stream<Finding> of(OutputRow row) {
        Output output = row.output();
        String name = "“" + output.name() + "”";
        Board board = Objects.requireNonNull(statement.fitted());
        if (row.drives().isEmpty()) {
            return Stream.of(OutputFindings.about(
                    IDLE, Verdict.TIGHT, output.name(), name + " is recorded and drives nothing."));
        }
        if (output.number() == null) {
            return Stream.of(OutputFindings.about(
                    NUMBER,
                    Verdict.BREAKS,
                    output.name(),
                    name + " hangs on no output of “" + board.name() + "” yet."));
        }
        if (row.use() == null) {
            return Stream.of(OutputFindings.about(
                    NUMBER,
                    Verdict.BREAKS,
                    output.name(),
                    name + " is meant for output " + output.number() + ", which “" + board.name() + "” has not."));
        }
        return row.couplesServosOfTheFlight() ? Stream.of(yLead(row)) : Stream.empty();
    }

    private static Finding yLead(OutputRow row) {
        Double peakA = row.peakA();
        String current = peakA == null
                ? ", and their peak current together is not known"
                : ", " + Figures.number(peakA, 2) + "\u2009A at peak through one plug";
        return OutputFindings.about(
                Y_LEAD,
                Verdict.TIGHT,
                row.output().name(),
                row.drivesInWords() + " hang on one output" + current
                        + (row.output().pieces() == 2
                                ? ": neither can be set, or fail, alone."
                                : ": none can be set, or fail, alone."));
    }

    /** Enough outputs by number, and still no way to give each a bank of its kind and rate. */
    private Stream<Finding> banks() {
        return statement.aboard().stream()
                .filter(aboard -> !aboard.board().banks().isEmpty())
                .flatMap(aboard -> aboard.withoutBank() > 0
                        ? Stream.of(withoutBank(aboard.withoutBank()))
                        : aboard.plan().isDecided() ? Stream.empty() : Stream.of(notDecided(aboard)));
    }

    private static Finding withoutBank(int left) {
        return OutputFindings.about(
                BANKS,
                Verdict.BREAKS,
                "Banks",
                "There are outputs enough, but " + PortKind.OUTPUT.counted(left)
                        + " of the needed kinds of pulse and rates "
                        + (left == 1 ? "finds" : "find") + " no bank, however they are planned.");
    }

    private static Finding notDecided(BoardComparison aboard) {
        int left = aboard.plan().leftOver().size();
        return OutputFindings.about(
                BANKS,
                Verdict.UNKNOWN,
                "Banks",
                "Whether every output finds a bank of its kind of pulse and rate is not known: there are too many ways to try them all, and the best one tried leaves "
                        + PortKind.OUTPUT.counted(left) + " over.");
    }

    /** All pieces at peak against what the plugs may carry together, where that is known. */
    private Stream<Finding> plugs() {
        Double limitA = Objects.requireNonNull(statement.fitted()).outputA();
        if (limitA == null || statement.outputs().isEmpty()) {
            return Stream.empty();
        }
        double sumA = 0;
        for (OutputRow row : statement.outputs()) {
            Double peakA = row.peakA();
            if (peakA == null) {
                return Stream.of(OutputFindings.about(
                        PLUGS,
                        Verdict.UNKNOWN,
                        "Plugs of the outputs",
                        "The plugs of the outputs may carry " + amperes(limitA) + " together, and the peak current of “"
                                + row.output().name() + "” is not known."));
            }
            sumA += peakA;
        }
        return sumA <= limitA
                ? Stream.empty()
                : Stream.of(OutputFindings.counted(
                        PLUGS,
                        Verdict.BREAKS,
                        "Plugs of the outputs",
                        sumA,
                        limitA,
                        "All that hangs on the outputs draws " + amperes(sumA) + " at peak, and their plugs may carry "
                                + amperes(limitA) + " together, if the current passes through the board."));
    }

    private static String amperes(double amperes) {
        return Figures.number(amperes, 2) + "\u2009A";
    }
}
