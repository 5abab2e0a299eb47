package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.OutputWords;
import org.jspecify.annotations.Nullable;

/** Writes rates and pulses for people; what is not known says so. */
final class Pulses {

    static final String NOT_KNOWN = "not known";

    private static final String THIN_SPACE = "\u2009";
    private static final int DIGITS = 4;

    private Pulses() {}

    static String hertz(@Nullable Double rateHz) {
        return rateHz == null ? NOT_KNOWN : Figures.number(rateHz, DIGITS) + THIN_SPACE + "Hz";
    }

    static String microseconds(@Nullable Double us) {
        return us == null ? NOT_KNOWN : Figures.number(us, DIGITS) + THIN_SPACE + "µs";
    }

    static String kind(@Nullable PulseKind kind) {
        return kind == null ? NOT_KNOWN : OutputWords.of(kind);
    }

    /** {@code 1000 to 2000 µs}; an on-off output has no travel. */
    static String travel(Output output) {
        Double low = output.lowUs();
        Double high = output.highUs();
        if (low == null && high == null) {
            return output.pulse() == PulseKind.ON_OFF ? "none" : NOT_KNOWN;
        }
        if (low == null) {
            return "up to " + microseconds(high);
        }
        return high == null ? "from " + microseconds(low) : Figures.number(low, DIGITS) + " to " + microseconds(high);
    }

    static String rest(Output output) {
        return output.restUs() == null && output.pulse() == PulseKind.ON_OFF ? "none" : microseconds(output.restUs());
    }

    /** {@code 100 Hz wanted, 333 Hz at most}. */
    static String rates(Output output) {
        Double wanted = output.wantedRateHz();
        Double fastest = output.maxRateHz();
        if (wanted == null && fastest == null) {
            return NOT_KNOWN;
        }
        return (wanted == null ? "wanted rate " + NOT_KNOWN : hertz(wanted) + " wanted") + ", "
                + (fastest == null ? "fastest " + NOT_KNOWN : hertz(fastest) + " at most");
    }
}
