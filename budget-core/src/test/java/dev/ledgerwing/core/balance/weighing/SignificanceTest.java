package dev.ledgerwing.core.balance.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Coverage factor 2 after JCGM 100:2008, 6.2.1; u of a difference of two independent figures after its eq. 10. */
class SignificanceTest {

    @Test
    void aDifferenceOfExactlyTwiceTheUncertaintyOfTheScalesStillAgrees() {
        assertThat(Significance.of(6, 3, 4)).isEqualTo(Significance.AGREES);
        assertThat(Significance.of(Math.nextUp(6.0), 3, 4)).isEqualTo(Significance.OFF);
    }

    @Test
    void aDifferenceOfExactlyTwiceTheJointUncertaintyIsStillAdmitted() {
        assertThat(Significance.of(10, 3, 4)).isEqualTo(Significance.OFF);
        assertThat(Significance.of(Math.nextUp(10.0), 3, 4)).isEqualTo(Significance.MORE_THAN_ADMITTED);
    }

    @Test
    void tooLittleCountsLikeTooMuch() {
        assertThat(Significance.of(-6, 3, 4)).isEqualTo(Significance.AGREES);
        assertThat(Significance.of(-10, 3, 4)).isEqualTo(Significance.OFF);
        assertThat(Significance.of(-10.001, 3, 4)).isEqualTo(Significance.MORE_THAN_ADMITTED);
    }

    @Test
    void aLedgerWithoutErrorLeavesNothingBetweenAgreeingAndMoreThanAdmitted() {
        assertThat(Significance.of(6, 3, 0)).isEqualTo(Significance.AGREES);
        assertThat(Significance.of(6.001, 3, 0)).isEqualTo(Significance.MORE_THAN_ADMITTED);
    }

    @Test
    void theWorseOfTwoIsTheSameFromBothSides() {
        assertThat(Significance.OFF.worseOf(Significance.AGREES)).isEqualTo(Significance.OFF);
        assertThat(Significance.AGREES.worseOf(Significance.OFF)).isEqualTo(Significance.OFF);
        assertThat(Significance.OFF.worseOf(Significance.MORE_THAN_ADMITTED))
                .isEqualTo(Significance.MORE_THAN_ADMITTED);
    }
}
