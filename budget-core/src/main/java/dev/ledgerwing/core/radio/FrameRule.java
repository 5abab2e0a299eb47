package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;

/** The gap of a pulse train against what the receiver needs to find the beginning of a frame. */
final class FrameRule {

    private FrameRule() {}

    static Finding finding(FrameTiming frame) {
        double limitUs = Math.max(frame.train().leastGapUs(), frame.train().longestPulseUs());
        Judged gap = Judged.microseconds(RadioFindings.FRAME, "Frame", frame.gapUs(), limitUs);
        if (frame.gapUs() < 0) {
            return gap.finding(
                    Verdict.BREAKS,
                    pulses(frame) + " take "
                            + us(frame.channels() * frame.train().longestPulseUs())
                            + " at their longest, more than the frame of " + us(frame.frameUs()) + ".");
        }
        String leaves = pulses(frame) + " leave a gap of " + us(frame.gapUs());
        if (frame.fits()) {
            return gap.finding(
                    Verdict.HOLDS,
                    leaves + " in a frame of " + us(frame.frameUs()) + ", " + Figures.number(frame.framesPerSecond(), 1)
                            + " frames a second.");
        }
        return gap.finding(
                Verdict.BREAKS,
                frame.gapUs() < frame.train().leastGapUs()
                        ? leaves + ", the receiver needs " + us(frame.train().leastGapUs()) + "."
                        : leaves + ", no longer than the longest pulse of "
                                + us(frame.train().longestPulseUs()) + ": the receiver takes it for one.");
    }

    private static String pulses(FrameTiming frame) {
        return "The pulses of " + RadioWords.channels(frame.channels());
    }

    private static String us(double microseconds) {
        return Figures.number(microseconds, 0) + "\u2009µs";
    }
}
