package dev.ledgerwing.core.radio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.PulseTrain;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published values are those of two public pages on pulse trains, one with oscilloscope readings. */
class FrameTimingTest {

    private static FrameTiming fixed(double frameUs, int channels, double longestUs) {
        return FrameTiming.of(new PulseTrain(frameUs, longestUs, 2500), channels);
    }

    private static FrameTiming free(int channels, double longestUs, double gapUs) {
        return FrameTiming.of(new PulseTrain(null, longestUs, gapUs), channels);
    }

    /** The oscilloscope page: a frame of 22 ms with seven channels. */
    @ParameterizedTest
    @CsvSource({"1500, 11500", "1100, 14300", "1900, 8700", "900, 15700", "2100, 7300"})
    void leavesTheGapOfAFixedFrameThatWasMeasured(double everyChannelUs, double gapUs) {
        FrameTiming frame = fixed(22_000, 7, everyChannelUs);
        assertThat(frame.gapUs()).isEqualTo(gapUs);
        assertThat(frame.fits()).isTrue();
    }

    /** The second page: 22.5 ms and eight channels of at most 2 ms leave 6.5 ms, about 45 frames a second. */
    @Test
    void leavesTheShortestGapThatIsPublishedForEightChannels() {
        FrameTiming frame = fixed(22_500, 8, 2000);
        assertThat(frame.gapUs()).isEqualTo(6500);
        assertThat(frame.framesPerSecond()).isCloseTo(44.44, within(0.005));
    }

    /** By derivation from the same frame: with all eight at 1 ms, 14.5 ms are left, where the page misprints 16.5. */
    @Test
    void leavesTheLongestGapForEightChannelsByDerivation() {
        assertThat(fixed(22_500, 8, 1000).gapUs()).isEqualTo(14_500);
    }

    /** By derivation: nine channels still leave the 2.5 ms that is usual, ten only just, eleven do not, twelve not even time. */
    @ParameterizedTest
    @CsvSource({"8, 6500, true", "9, 4500, true", "10, 2500, true", "11, 500, false", "12, -1500, false"})
    void fitsAsManyChannelsAsLeaveTheGap(int channels, double gapUs, boolean fits) {
        FrameTiming frame = fixed(22_500, channels, 2000);
        assertThat(frame.gapUs()).isEqualTo(gapUs);
        assertThat(frame.fits()).isEqualTo(fits);
    }

    /** The second page, for frames as long as they need to be. */
    @ParameterizedTest
    @CsvSource({"12, 5700, 30900", "16, 5700, 39300", "9, 5700, 24600", "9, 2700, 21600"})
    void growsAFreeFrameAsPublished(int channels, double gapUs, double frameUs) {
        FrameTiming frame = free(channels, 2100, gapUs);
        assertThat(frame.frameUs()).isCloseTo(frameUs, within(1e-9));
        assertThat(frame.gapUs()).isEqualTo(gapUs);
        assertThat(frame.fits()).isTrue();
    }

    /** The same page: 24.6 ms is more than a frame of 22 ms, so nine channels do not fit it. */
    @Test
    void doesNotFitNineChannelsIntoAFrameThatIsFixed() {
        assertThat(FrameTiming.of(new PulseTrain(22_000.0, 2100, 5700), 9).fits())
                .isFalse();
    }

    @Test
    void doesNotFitWhereTheGapIsNoLongerThanAPulse() {
        assertThat(free(4, 2000, 2000).fits()).isFalse();
        assertThat(free(4, 2000, 2001).fits()).isTrue();
    }

    private static void says(FrameTiming frame, Verdict verdict, String sentence) {
        Finding finding = FrameRule.finding(frame);
        assertThat(Said.sentence(finding)).isEqualTo(sentence);
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.code()).isEqualTo("radio.frame");
        assertThat(finding.measured()).isEqualTo(frame.gapUs());
        assertThat(finding.unit()).isEqualTo("µs");
    }

    @Test
    void saysTheGapAgainstWhatTheReceiverNeeds() {
        says(
                fixed(22_500, 8, 2000),
                Verdict.HOLDS,
                "The pulses of 8 channels leave a gap of 6500 µs in a frame of 22500 µs, 44.4 frames a second.");
        says(
                fixed(22_500, 11, 2000),
                Verdict.BREAKS,
                "The pulses of 11 channels leave a gap of 500 µs, the receiver needs 2500 µs.");
        says(
                fixed(22_500, 12, 2000),
                Verdict.BREAKS,
                "The pulses of 12 channels take 24000 µs at their longest, more than the frame of 22500 µs.");
        says(
                free(4, 2000, 1900),
                Verdict.BREAKS,
                "The pulses of 4 channels leave a gap of 1900 µs, no longer than the longest pulse of 2000 µs: the"
                        + " receiver takes it for one.");
    }
}
