package dev.ledgerwing.core.power.wire;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WireProtectionTest {

    /** FAA AC 43.13-1B CHG 1, Table 11-3; the last three rows are read with less certainty. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            22, 5,   5
            20, 7.5, 5
            18, 10,  10
            16, 15,  10
            14, 20,  15
            12, 30,  20
            10, 40,  30
            8,  50,  50
            6,  80,  70
            4,  100, 70
            2,  125, 100
            1,  ,    150
            0,  ,    150
            """)
    void isThatOfTheTable(int awg, @Nullable Double breakerA, double fuseA) {
        assertThat(WireProtection.of(awg)).isEqualTo(new WireProtection(awg, breakerA, fuseA));
    }

    @ParameterizedTest
    @CsvSource({"21, 22", "19, 20", "3, 4"})
    void isThatOfTheNextThinnerOneForAGaugeBetween(int awg, int taken) {
        assertThat(WireProtection.of(awg)).isEqualTo(WireProtection.of(taken));
    }

    @ParameterizedTest
    @ValueSource(ints = {23, 24, 30, -1})
    void isNotKnownOutsideOfTheTable(int awg) {
        assertThat(WireProtection.of(awg).isKnown()).isFalse();
    }
}
