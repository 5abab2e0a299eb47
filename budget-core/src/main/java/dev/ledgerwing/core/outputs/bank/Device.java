package dev.ledgerwing.core.outputs.bank;

import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PulseKind;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What an output drives, as far as a bank is concerned.
 *
 * @param code of the output in the record
 * @param number the output it hangs on now; null = none yet
 * @param pulse kind of pulse it understands; what is not known is taken for a servo pulse
 * @param maxRateHz fastest rate it bears, {@code wantedRateHz} the one it wants; null = not known
 */
public record Device(
        String code,
        @Nullable Integer number,
        PulseKind pulse,
        @Nullable Double maxRateHz,
        @Nullable Double wantedRateHz,
        double longestPulseUs) {

    /** Full travel of a servo: 1000 to 2000 µs (a public glossary of radio control). */
    private static final double FULL_TRAVEL_US = 2000;

    private static final double US_PER_S = 1e6;

    /** What one output drives. */
    public static Device of(Output output) {
        Double highUs = output.highUs();
        return new Device(
                output.code(),
                output.number(),
                Objects.requireNonNullElse(output.pulse(), PulseKind.SERVO_PULSE),
                output.maxRateHz(),
                output.wantedRateHz(),
                highUs == null ? FULL_TRAVEL_US : highUs);
    }

    Device withNumber(@Nullable Integer changed) {
        return new Device(code, changed, pulse, maxRateHz, wantedRateHz, longestPulseUs);
    }

    boolean hangsOn(OutputBank bank) {
        return number != null && bank.outputNumbers().contains(number);
    }

    /** Whether it can work at a rate: not faster than it bears, and its longest pulse ends before the next one begins. */
    public boolean bears(double rateHz) {
        return (maxRateHz == null || rateHz <= maxRateHz) && pulseFits(rateHz);
    }

    /** A servo pulse has to fit its period, 1/rate; other kinds say nothing by their width. */
    public boolean pulseFits(double rateHz) {
        return pulse != PulseKind.SERVO_PULSE || longestPulseUs < US_PER_S / rateHz;
    }

    /** Whether a rate is slower than it wants. */
    public boolean missesItsWish(double rateHz) {
        return wantedRateHz != null && rateHz < wantedRateHz;
    }
}
