package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.BanksView.BankMark;
import dev.ledgerwing.report.drawing.BanksView.LeadMark;
import dev.ledgerwing.report.drawing.BanksView.PinMark;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Makes a {@link BanksView} of a board and of what hangs on its outputs. */
final class BanksViews {

    private static final String NO_NUMBER = "no output is chosen for it yet";

    private final Build build;
    private final @Nullable Board board;
    private final List<Output> outputs;
    private final Map<String, String> partNames;

    BanksViews(Build build, @Nullable Board board, List<Output> outputs) {
        this.build = build;
        this.board = board;
        this.outputs = outputs;
        this.partNames = build.lines().stream().collect(Collectors.toMap(PartLine::id, PartLine::name));
    }

    BanksView view() {
        List<BankMark> banks = board == null
                ? List.of()
                : board.banks().stream().map(this::bank).toList();
        return new BanksView(build.airframe().name(), board == null ? "" : board.name(), sentences(), banks, loose());
    }

    private List<String> sentences() {
        if (board == null) {
            return List.of("No flight controller is chosen yet.");
        }
        return board.banks().isEmpty()
                ? List.of("No output of “" + board.name() + "” is recorded yet.")
                : List.of(board.name() + ": "
                        + OutputWords.count(board.outputs(), "output") + " in "
                        + OutputWords.count(board.banks().size(), "bank"));
    }

    private BankMark bank(OutputBank bank) {
        List<PinMark> pins =
                bank.outputNumbers().stream().sorted().map(this::pin).toList();
        return new BankMark(
                "Bank " + bank.name(), List.of(OutputWords.rates(bank), OutputWords.pulses(bank)), null, pins);
    }

    private PinMark pin(int number) {
        List<Output> here = outputs.stream()
                .filter(output -> Integer.valueOf(number).equals(output.number()))
                .toList();
        String fault = here.size() > 1 ? "used twice" : "";
        return new PinMark(
                number, here.stream().map(output -> lead(output, fault)).toList());
    }

    private LeadMark lead(Output output, String fault) {
        List<String> facts = output.drives().stream()
                .map(driven -> (driven.pieces() == 1 ? "" : driven.pieces() + " × ")
                        + partNames.getOrDefault(driven.line(), driven.line()))
                .collect(Collectors.toList());
        if (facts.isEmpty()) {
            facts.add("nothing hangs on it yet");
        }
        PulseKind pulse = output.pulse();
        String kind = pulse == null ? "kind of pulse not known" : OutputWords.of(pulse);
        facts.set(facts.size() - 1, facts.get(facts.size() - 1) + " · " + kind);
        Verdict verdict = fault.isEmpty() ? null : fault.equals(NO_NUMBER) ? Verdict.UNKNOWN : Verdict.BREAKS;
        return new LeadMark(output.name(), output.pieces(), facts, verdict, fault);
    }

    private List<LeadMark> loose() {
        return outputs.stream()
                .filter(output -> !isOnBoard(output.number()))
                .map(output -> {
                    Integer number = output.number();
                    return lead(output, number == null ? NO_NUMBER : "output " + number + " is not on the board");
                })
                .toList();
    }

    private boolean isOnBoard(@Nullable Integer number) {
        return number != null
                && board != null
                && board.banks().stream().anyMatch(bank -> bank.outputNumbers().contains(number));
    }
}
