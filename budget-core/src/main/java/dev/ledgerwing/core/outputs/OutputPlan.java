package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.outputs.bank.BankPlan;
import dev.ledgerwing.core.outputs.bank.BankPlanner;
import dev.ledgerwing.core.outputs.bank.Device;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Plans what hangs on which output: what is recorded stays as it is where it can, and what is missing is added. */
public final class OutputPlan {

    private static final int LONGEST_STEM = 30;

    private OutputPlan() {}

    /**
     * The record with an output for every part that needs one, each on a bank of the board aboard as far as there is room.
     *
     * @throws IllegalArgumentException when no board is chosen
     */
    public static Build apply(Build build) {
        Board board = OutputStatement.fitted(build)
                .orElseThrow(() -> new IllegalArgumentException("choose the flight controller that is aboard first"));
        List<Output> outputs = completed(build);
        BankPlan plan =
                BankPlanner.plan(board.banks(), outputs.stream().map(Device::of).toList());
        return build.withOutputs(outputs.stream()
                .map(output -> output.withNumber(plan.numberOf(output.code()).orElse(null)))
                .toList());
    }

    /** The recorded outputs, and behind them one for every connection that a part needs and nobody has recorded. */
    static List<Output> completed(Build build) {
        List<Output> outputs = new ArrayList<>(build.outputs().assignments());
        Set<String> codes = new HashSet<>();
        outputs.forEach(output -> codes.add(output.code()));
        for (Undriven missing : Undriven.of(build)) {
            outputs.addAll(started(missing, codes));
        }
        return outputs;
    }

    private static List<Output> started(Undriven missing, Set<String> codes) {
        PartLine line = missing.line();
        int count = Math.max(1, Math.min(missing.outputs(), missing.pieces()));
        List<Output> started = new ArrayList<>();
        int pieces = Math.max(missing.pieces(), count);
        for (int i = 0; i < count; i++) {
            int here = pieces / count + (i < pieces % count ? 1 : 0);
            String name = count == 1 ? line.name() : line.name() + " " + (i + 1);
            started.add(new Output(
                    code(line.name(), codes),
                    name.length() > 200 ? line.name() : name,
                    null,
                    List.of(new Driven(line.id(), here)),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    false));
        }
        return started;
    }

    private static String code(String name, Set<String> taken) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String stem = plain.isEmpty() ? "output" : plain.substring(0, Math.min(LONGEST_STEM, plain.length()));
        String code = stem;
        for (int i = 2; !taken.add(code); i++) {
            code = stem + "-" + i;
        }
        return code;
    }
}
