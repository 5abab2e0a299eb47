package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.quantity.Figures;
import java.util.List;
import java.util.stream.Collectors;

/** What drawings and sheets call outputs. */
public final class OutputWords {

    private OutputWords() {}

    public static String of(PulseKind kind) {
        return switch (kind) {
            case SERVO_PULSE -> "servo pulse";
            case DATA -> "data";
            case ON_OFF -> "on-off";
        };
    }

    /** {@code 50, 100 or 333 Hz}. */
    public static String rates(OutputBank bank) {
        return bank.ratesHz().isEmpty()
                ? "rate not known"
                : any(bank.ratesHz().stream()
                                .map(rate -> Figures.number(rate, 1))
                                .toList()) + "\u2009Hz";
    }

    public static String pulses(OutputBank bank) {
        return bank.pulses().isEmpty()
                ? "kind of pulse not known"
                : any(bank.pulses().stream().map(OutputWords::of).toList());
    }

    /** {@code 1 bank} or {@code 4 banks}. */
    public static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String any(List<String> words) {
        int last = words.size() - 1;
        return last == 0
                ? words.get(0)
                : words.stream().limit(last).collect(Collectors.joining(", ")) + " or " + words.get(last);
    }
}
