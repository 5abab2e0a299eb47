package dev.ledgerwing.core.balance.correction;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RangesTest {

    @Test
    void whatTwoLeaveOpenIsOpen() {
        Ranges both = Ranges.between(-10, 10).without(-2, 3).and(Ranges.between(-5, 4));
        assertThat(both.all()).containsExactly(new Ranges.Range(-5, -2), new Ranges.Range(3, 4));
        assertThat(Ranges.between(1, 2).and(Ranges.between(3, 4)).isEmpty()).isTrue();
        assertThat(Ranges.between(2, 1).isEmpty()).isTrue();
    }

    @Test
    void theEndsOfAGapStayOpen() {
        Ranges gap = Ranges.between(0, 10).without(0, 10);
        assertThat(gap.contains(0)).isTrue();
        assertThat(gap.contains(10)).isTrue();
        assertThat(gap.contains(5)).isFalse();
        assertThat(Ranges.between(0, 10).without(5, 5)).isEqualTo(Ranges.between(0, 10));
    }

    @Test
    void theWholeNumberNearestIsTakenFromTheNearestRangeThatHasOne() {
        Ranges ranges = Ranges.between(-8.5, 12).without(-3.2, 2.9).without(3.1, 7.5);
        assertThat(ranges.wholeNearest(0)).hasValue(3);
        assertThat(ranges.wholeNearest(-20)).hasValue(-8);
        assertThat(Ranges.between(-4, 4).without(-4, 4).wholeNearest(0))
                .as("of two as near the smaller")
                .hasValue(-4);
        assertThat(Ranges.between(0.2, 0.8).wholeNearest(0)).isEmpty();
        assertThat(Ranges.NOTHING.wholeNearest(0)).isEmpty();
    }

    @Test
    void theFirstAndTheLastWholeNumberLieInside() {
        Ranges ranges = Ranges.between(0.2, 9.7).without(0.8, 2.5).without(8.5, 9.4);
        assertThat(ranges.firstWhole()).hasValue(3);
        assertThat(ranges.lastWhole()).hasValue(8);
        assertThat(Ranges.NOTHING.firstWhole()).isEmpty();
    }

    @Test
    void shiftingMovesBothEnds() {
        assertThat(Ranges.between(1, 2).shifted(-3)).isEqualTo(Ranges.between(-2, -1));
    }
}
