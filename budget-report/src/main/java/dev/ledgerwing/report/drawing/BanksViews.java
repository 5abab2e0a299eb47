package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.outputs.BankUse;
import dev.ledgerwing.core.outputs.OutputRow;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.BanksView.BankMark;
import dev.ledgerwing.report.drawing.BanksView.LeadMark;
import dev.ledgerwing.report.drawing.BanksView.PinMark;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Makes a {@link BanksView} of the board aboard and of what hangs on its outputs. */
final class BanksViews {

    private final OutputStatement statement;
    private final Map<String, String> partNames;

    BanksViews(OutputStatement statement) {
        this.statement = statement;
        this.partNames = statement.build().lines().stream().collect(Collectors.toMap(PartLine::id, PartLine::name));
    }

    BanksView view() {
        Board board = statement.fitted();
        return new BanksView(
                statement.build().airframe().name(),
                board == null ? "" : board.name(),
                List.of(sentence(board)),
                statement.banks().stream().map(this::bank).toList(),
                statement.outputs().stream()
                        .filter(row -> row.use() == null)
                        .map(this::lead)
                        .toList());
    }

    private static String sentence(@Nullable Board board) {
        if (board == null) {
            return "No flight controller is chosen yet.";
        }
        return board.banks().isEmpty()
                ? "No output of “" + board.name() + "” is recorded yet."
                : board.name() + ": " + OutputWords.count(board.outputs(), "output") + " in "
                        + OutputWords.count(board.banks().size(), "bank");
    }

    private BankMark bank(BankUse use) {
        List<OutputRow> rows = statement.outputs().stream()
                .filter(row -> use.equals(row.use()))
                .toList();
        Verdict verdict = rows.isEmpty()
                ? null
                : Verdict.worst(rows.stream()
                        .map(row -> OutputMark.of(statement, row).verdict())
                        .toList());
        List<PinMark> pins = use.bank().outputNumbers().stream()
                .sorted()
                .map(number -> new PinMark(number, leads(rows, number)))
                .toList();
        return new BankMark("Bank " + use.bank().name(), facts(use), verdict, pins);
    }

    private static List<String> facts(BankUse use) {
        String can = "can " + OutputWords.rates(use.bank()) + "; " + OutputWords.pulses(use.bank());
        if (use.outputs().isEmpty()) {
            return List.of(can);
        }
        Double rateHz = use.rateHz();
        PulseKind pulse = use.pulse();
        String now = "set to " + (rateHz == null ? "a rate not known" : OutputMark.hertz(rateHz)) + ", "
                + (pulse == null ? "kind of pulse not known" : OutputWords.of(pulse));
        return List.of(now, can);
    }

    private List<LeadMark> leads(List<OutputRow> rows, int number) {
        return rows.stream()
                .filter(row -> Objects.equals(row.output().number(), number))
                .map(this::lead)
                .toList();
    }

    private LeadMark lead(OutputRow row) {
        Output output = row.output();
        List<String> facts = new ArrayList<>(output.drives().stream()
                .map(driven -> (driven.pieces() == 1 ? "" : driven.pieces() + " × ")
                        + partNames.getOrDefault(driven.line(), driven.line()))
                .toList());
        if (facts.isEmpty()) {
            facts.add("nothing hangs on it yet");
        }
        PulseKind pulse = output.pulse();
        String kind = pulse == null ? "kind of pulse not known" : OutputWords.of(pulse);
        facts.set(facts.size() - 1, facts.get(facts.size() - 1) + " · " + kind);
        OutputMark mark = OutputMark.of(statement, row);
        return new LeadMark(output.name(), output.pieces(), facts, mark.isFine() ? null : mark.verdict(), mark.words());
    }
}
