package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.outputs.BankUse;
import dev.ledgerwing.core.outputs.OutputRow;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.power.wire.WireGauge;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.OutputMark;
import dev.ledgerwing.report.drawing.OutputWords;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One output on paper.
 *
 * @param number a dash where none is chosen
 * @param bank name of its bank; a dash where the board has no such output
 * @param drives what hangs on it
 * @param ends the pulses at both ends of the travel
 * @param lead wires from the rail to one piece
 * @param mark what is wrong with it; null = nothing
 */
public record OutputEntry(
        String number,
        String bank,
        String name,
        String drives,
        String signal,
        String ends,
        String rest,
        String sense,
        String lead,
        @Nullable VerdictMark mark) {

    private static final String NOT_KNOWN = "not known";
    private static final String NONE = "–";

    /** Every output of the record, by number; those without one last. */
    static List<OutputEntry> of(OutputStatement statement, Figures units) {
        return statement.outputs().stream()
                .sorted(Comparator.comparing(
                        row -> row.output().number(), Comparator.nullsLast(Comparator.naturalOrder())))
                .map(row -> of(row, OutputMark.of(statement, row), units))
                .toList();
    }

    private static OutputEntry of(OutputRow row, OutputMark mark, Figures units) {
        Output output = row.output();
        Integer number = output.number();
        BankUse use = row.use();
        PulseKind pulse = output.pulse();
        boolean servo = pulse == null || pulse == PulseKind.SERVO_PULSE;
        return new OutputEntry(
                number == null ? NONE : String.valueOf(number),
                use == null ? NONE : use.bank().name(),
                output.name(),
                drives(row),
                pulse == null ? NOT_KNOWN : OutputWords.of(pulse),
                servo ? ends(output) : NONE,
                servo ? micros(output.restUs()) : NONE,
                output.reversed() ? "reversed" : "normal",
                lead(row, units),
                mark.isFine()
                        ? null
                        : VerdictMark.saying(mark.verdict(), mark.verdict().word() + ": " + mark.words()));
    }

    private static String drives(OutputRow row) {
        String parts = row.drivesInWords();
        if (parts.isEmpty()) {
            return "nothing yet";
        }
        Double peakA = row.peakA();
        return !row.isYLead()
                ? parts
                : parts + " on a Y-lead, " + (peakA == null ? "peak not known" : PowerWords.amperes(peakA) + " peak");
    }

    /** {@code 1000 to 2000 µs}; each that is not known says so. */
    private static String ends(Output output) {
        Double low = output.lowUs();
        return (low == null || output.highUs() == null ? micros(low) : Figures.number(low, 0)) + " to "
                + micros(output.highUs());
    }

    private static String micros(@Nullable Double us) {
        return us == null ? NOT_KNOWN : Figures.number(us, 0) + "\u2009µs";
    }

    private static String lead(OutputRow row, Figures units) {
        List<String> leads = row.drives().stream()
                .flatMap(drive -> drive.line().electrical().stream())
                .map(ElectricalLoad::lead)
                .filter(Objects::nonNull)
                .map(run -> words(run, units))
                .distinct()
                .toList();
        return leads.isEmpty() ? NOT_KNOWN : String.join("; ", leads);
    }

    private static String words(WireRun run, Figures units) {
        return WireGauge.of(run.awg()).label() + ", " + units.length(run.length()) + ", " + run.conductors() + " wires";
    }
}
