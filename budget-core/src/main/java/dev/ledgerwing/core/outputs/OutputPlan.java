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
    private static final int LONGEST_NAME = 200;

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
            outputs.addAll(started(missing, build.outputs().assignments(), codes));
        }
        return outputs;
    }

    private static List<Output> started(Undriven missing, List<Output> recorded, Set<String> codes) {
        PartLine line = missing.line();
        List<Output> siblings = recorded.stream()
                .filter(output -> output.drives().stream()
                        .anyMatch(driven -> driven.line().equals(line.id())))
                .toList();
        int count = count(missing);
        int pieces = Math.max(missing.pieces(), count);
        List<Output> started = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int here = pieces / count + (i < pieces % count ? 1 : 0);
            boolean alone = count == 1 && siblings.isEmpty();
            String name = alone ? line.name() : line.name() + " " + (siblings.size() + i + 1);
            started.add(blank(
                    code(line.name(), codes),
                    name.length() > LONGEST_NAME ? line.name() : name,
                    new Driven(line.id(), here),
                    siblings));
        }
        return started;
    }

    /**
     * A piece that hangs on a plug already gets another one only where the pieces of a part have several plugs each: who put
     * two pieces on a Y-lead meant it.
     */
    private static int count(Undriven missing) {
        int pieces = missing.pieces();
        PartLine line = missing.line();
        if (line.needs().outputs() > line.quantity()) {
            return Math.max(missing.outputs(), Math.min(1, pieces));
        }
        return Math.max(Math.min(1, pieces), Math.min(missing.outputs(), pieces));
    }

    /** Equal pieces understand and bear the same: what is recorded of one of them goes for the others, but not how it is set up. */
    private static Output blank(String code, String name, Driven drives, List<Output> siblings) {
        Output like = siblings.isEmpty() ? null : siblings.get(0);
        return new Output(
                code,
                name,
                null,
                List.of(drives),
                like == null ? null : like.pulse(),
                like == null ? null : like.maxRateHz(),
                like == null ? null : like.wantedRateHz(),
                null,
                null,
                null,
                false);
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
