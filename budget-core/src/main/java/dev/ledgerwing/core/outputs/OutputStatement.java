package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.outputs.bank.Device;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Everything there is to say about outputs and ports of a build: one object for page, sheet and review.
 *
 * @param boards every candidate, in the order of the record
 * @param fitted the board aboard; null = none was chosen
 * @param banks of the board aboard
 * @param outputs what is recorded of each output, in the order of the record
 */
public record OutputStatement(
        Build build,
        PortTally need,
        List<BoardComparison> boards,
        @Nullable Board fitted,
        List<BankUse> banks,
        List<OutputRow> outputs,
        List<Undriven> undriven) {

    public OutputStatement {
        boards = List.copyOf(boards);
        banks = List.copyOf(banks);
        outputs = List.copyOf(outputs);
        undriven = List.copyOf(undriven);
    }

    public static OutputStatement of(Build build) {
        PortTally need = PortTally.of(build);
        List<Device> devices =
                OutputPlan.completed(build).stream().map(Device::of).toList();
        Board fitted = fitted(build).orElse(null);
        List<Output> recorded = build.outputs().assignments();
        List<BankUse> banks = fitted == null ? List.of() : BankUse.of(fitted, recorded);
        return new OutputStatement(
                build,
                need,
                build.outputs().boards().stream()
                        .map(board -> BoardComparison.of(build, need, devices, board))
                        .toList(),
                fitted,
                banks,
                recorded.stream()
                        .map(output -> OutputRow.of(build, output, banks))
                        .toList(),
                Undriven.of(build));
    }

    static Optional<Board> fitted(Build build) {
        String code = build.outputs().fitted().board();
        return build.outputs().boards().stream()
                .filter(board -> board.code().equals(code))
                .findFirst();
    }

    /** The comparison of the board aboard. */
    public Optional<BoardComparison> aboard() {
        return boards.stream().filter(BoardComparison::aboard).findFirst();
    }

    /** Neither boards nor outputs are recorded, and no part needs any connection. */
    public boolean isBlank() {
        return boards.isEmpty() && outputs.isEmpty() && need.lines().isEmpty();
    }

    /** Outputs of the record that claim one number together, by that number. */
    public Map<Integer, List<Output>> doubleUse() {
        Map<Integer, List<Output>> byNumber = new TreeMap<>(outputs.stream()
                .map(OutputRow::output)
                .filter(output -> output.number() != null)
                .collect(Collectors.groupingBy(Output::number)));
        byNumber.values().removeIf(all -> all.size() < 2);
        return byNumber;
    }
}
