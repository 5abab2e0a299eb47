package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * The frame of a link that sends its channels as pulses one behind the other, and a gap.
 *
 * @param frameUs length of a frame in microseconds; null = as long as its pulses and its gap take
 * @param longestPulseUs longest pulse of a channel, edge to edge, the separator included
 * @param leastGapUs shortest gap by which the receiver finds the beginning
 */
public record PulseTrain(@Nullable Double frameUs, double longestPulseUs, double leastGapUs) {

    public PulseTrain {
        Check.within("frameUs", frameUs, 1000, 100_000, " µs");
        Check.within("longestPulseUs", longestPulseUs, 100, 10_000, " µs");
        Check.within("leastGapUs", leastGapUs, 100, 50_000, " µs");
    }
}
