package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.outputs.BankUse;
import dev.ledgerwing.core.outputs.OutputRow;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One output of the record.
 *
 * @param number as printed on the board, or that it has none
 * @param bank the bank and the rate it is set to
 * @param lead what a Y-lead on it means; empty where one piece hangs on it
 * @param fault why it cannot be so; empty where nothing speaks against it
 */
record OutputLine(
        String code,
        String name,
        String number,
        String bank,
        String drives,
        String pulse,
        String rates,
        String travel,
        String rest,
        String sense,
        String lead,
        String fault) {

    /** What goes with the fault. */
    public Verdict verdict() {
        return Verdict.BREAKS;
    }

    /** Bank, pulse and rates in one line, for a narrow page. */
    public String pulseNote() {
        return (bank.isEmpty() ? "" : "bank " + bank + "; ") + pulse + ", " + rates;
    }

    /** Travel, rest and sense in one line, for a narrow page. */
    public String travelNote() {
        return "travel " + travel + ", at rest " + rest + ", " + sense;
    }

    /** By number, those without one behind the others. */
    static List<OutputLine> of(OutputStatement statement) {
        return statement.outputs().stream()
                .sorted(Comparator.comparing(
                        (OutputRow row) -> row.output().number(), Comparator.nullsLast(Comparator.naturalOrder())))
                .map(row -> line(row, statement))
                .toList();
    }

    private static OutputLine line(OutputRow row, OutputStatement statement) {
        Output output = row.output();
        Integer number = output.number();
        return new OutputLine(
                output.code(),
                output.name(),
                number == null ? "none yet" : number.toString(),
                bank(row.use()),
                row.drives().isEmpty() ? "nothing yet" : row.drivesInWords(),
                Pulses.kind(output.pulse()),
                Pulses.rates(output),
                Pulses.travel(output),
                Pulses.rest(output),
                output.reversed() ? "reversed" : "as commanded",
                lead(row),
                fault(row, statement));
    }

    /** {@code A at 100 Hz}. */
    private static String bank(@Nullable BankUse use) {
        if (use == null) {
            return "";
        }
        OutputBank bank = use.bank();
        return bank.name() + " at "
                + (use.rateHz() == null ? "a rate " + Pulses.NOT_KNOWN : Pulses.hertz(use.rateHz()));
    }

    private static String lead(OutputRow row) {
        if (!row.isYLead()) {
            return "";
        }
        Double peakA = row.peakA();
        return "Y-lead, " + row.output().pieces() + " pieces: "
                + (peakA == null ? "peak current " + Pulses.NOT_KNOWN : PowerWords.amperes(peakA) + " at peak")
                + (row.couplesServosOfTheFlight() ? "; neither can be set or fail alone" : "");
    }

    private static String fault(OutputRow row, OutputStatement statement) {
        Integer number = row.output().number();
        if (number == null) {
            return "";
        }
        List<String> others = statement.doubleUse().getOrDefault(number, List.of()).stream()
                .filter(other -> !other.code().equals(row.output().code()))
                .map(Output::name)
                .toList();
        if (!others.isEmpty()) {
            return "breaks: used twice, also by " + String.join(", ", others);
        }
        return statement.fitted() != null && row.use() == null
                ? "breaks: " + statement.fitted().name() + " has no output " + number
                : "";
    }
}
