package dev.ledgerwing.core.power.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By derivation: charge is current times time. */
class PackTimeTest {

    /** Published by sellers of packs: 5 Ah give 5 A for 1 h, or 10 A for half an hour. */
    @ParameterizedTest
    @CsvSource({"5, 60", "10, 30"})
    void givesThePublishedTimes(double meanA, double minutes) {
        assertThat(new PackTime(5000, List.of(stretch(meanA)), 0).minutes()).isCloseTo(minutes, within(1e-9));
    }

    @Test
    void letsTheStretchingPhaseTakeWhatTheOthersLeave() {
        // 4 Ah less 10 A x 6 min = 1 Ah and 2 A x 3 min = 0.1 Ah leave 2.9 Ah: 87 min at 2 A, less 5 min kept
        PackTime time = new PackTime(4000, List.of(fixed(6, 10), stretch(2), fixed(3, 2)), 5);
        assertThat(time.holdsFixedPhases()).isTrue();
        assertThat(time.fixedMinutes()).isCloseTo(9, within(1e-9));
        assertThat(time.minutes()).isCloseTo(9 + 82, within(1e-9));
    }

    @Test
    void isSpentInTheFixedPhasesWhenTheyAskForTooMuch() {
        // 5 min of 2 A are kept of 1 Ah: 5/6 Ah are left, 0.5 Ah go in 3 min, the rest at 5 A in 4 min
        PackTime time = new PackTime(1000, List.of(fixed(3, 10), stretch(2), fixed(6, 5)), 5);
        assertThat(time.holdsFixedPhases()).isFalse();
        assertThat(time.minutes()).isCloseTo(7, within(1e-9));
    }

    @Test
    void lastsNoTimeWhenItHoldsLessThanTheReserve() {
        PackTime time = new PackTime(100, List.of(stretch(2)), 5);
        assertThat(time.holdsFixedPhases()).isFalse();
        assertThat(time.minutes()).isZero();
    }

    @Test
    void lastsTheFixedPhasesWhereNothingStretches() {
        // 1 Ah and 1 Ah in 36 min: 10 min more at that mean ask for 0.5556 Ah
        List<PackLeg> legs = List.of(fixed(6, 10), fixed(30, 2));
        assertThat(new PackTime(2556, legs, 10).holdsFixedPhases()).isTrue();
        assertThat(new PackTime(2556, legs, 10).minutes()).isCloseTo(36, within(1e-9));
        assertThat(new PackTime(2555, legs, 10).holdsFixedPhases()).isFalse();
        assertThat(new PackTime(2555, legs, 10).minutes()).isLessThan(36);
    }

    @Test
    void doesNotLimitAPhaseInWhichItGivesNothing() {
        PackTime time = new PackTime(1000, List.of(fixed(6, 5), stretch(0)), 5);
        assertThat(time.holdsFixedPhases()).isTrue();
        assertThat(time.minutes()).isInfinite();
    }

    private static PackLeg fixed(double minutes, double meanA) {
        return new PackLeg(minutes, false, meanA);
    }

    private static PackLeg stretch(double meanA) {
        return new PackLeg(0, true, meanA);
    }
}
