package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.PulseTrain;

/**
 * Whether the channels of a pulse train fit into its frame. Fixed frame F with n channels whose pulses take at most p, the separator
 * included: the shortest gap is F − n p. Without a fixed frame the gap keeps its length and the longest frame is n p + gap. Either way the
 * gap must be longer than the longest pulse, or the receiver takes it for one. All in microseconds (a public glossary of radio control).
 *
 * @param channels how many the link sends
 * @param frameUs the longest frame
 * @param gapUs the shortest gap; less than 0 = the pulses alone are longer than the frame
 */
public record FrameTiming(PulseTrain train, int channels, double frameUs, double gapUs) {

    private static final double US_PER_SECOND = 1_000_000;

    public static FrameTiming of(PulseTrain train, int channels) {
        double pulsesUs = channels * train.longestPulseUs();
        Double fixedUs = train.frameUs();
        return fixedUs == null
                ? new FrameTiming(train, channels, pulsesUs + train.leastGapUs(), train.leastGapUs())
                : new FrameTiming(train, channels, fixedUs, fixedUs - pulsesUs);
    }

    public boolean isFixed() {
        return train.frameUs() != null;
    }

    /** Whether the receiver can always tell where a frame begins. */
    public boolean fits() {
        return gapUs >= train.leastGapUs() && gapUs > train.longestPulseUs();
    }

    /** How often each channel is sent, at the longest frame. */
    public double framesPerSecond() {
        return US_PER_SECOND / frameUs;
    }
}
