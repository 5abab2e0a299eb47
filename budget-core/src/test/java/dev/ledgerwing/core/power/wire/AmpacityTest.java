package dev.ledgerwing.core.power.wire;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.build.WireRun.Routing;
import dev.ledgerwing.core.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmpacityTest {

    /** FAA AC 43.13-1B CHG 1, Table 11-9, by what the insulation bears: bundled and at 70 °C already. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            24, 2.5, 4,   5
            22, 3,   5,   6
            20, 4,   7,   9
            18, 6,   9,   12
            16, 7,   11,  14
            14, 10,  14,  18
            12, 13,  19,  25
            10, 17,  26,  32
            8,  38,  57,  71
            6,  50,  76,  97
            4,  68,  103, 133
            2,  95,  141, 179
            """)
    void isThatOfTheTableInABundle(int awg, double at105, double at150, double at200) {
        assertThat(bundled(awg, 105.0).continuousA()).isEqualTo(at105);
        assertThat(bundled(awg, 150.0).continuousA()).isEqualTo(at150);
        assertThat(bundled(awg, 200.0).continuousA()).isEqualTo(at200);
    }

    @ParameterizedTest
    @CsvSource({"105, 3", "149, 3", "150, 5", "199, 5", "200, 6", "260, 6"})
    void takesTheColumnThatTheInsulationBears(double insulationC, double ampere) {
        assertThat(bundled(22, insulationC).continuousA()).isEqualTo(ampere);
    }

    @ParameterizedTest
    @ValueSource(doubles = {80, 104.9})
    void isNotKnownForInsulationBelowTheTable(double insulationC) {
        Ampacity ampacity = bundled(22, insulationC);
        assertThat(ampacity.isKnown()).isFalse();
        assertThat(ampacity.outsideTable()).isFalse();
        assertThat(Said.plain(ampacity.source())).endsWith("FAA AC 43.13-1B Table 11-9 begins at 105 °C");
    }

    @ParameterizedTest
    @CsvSource({"22", "26"})
    void isNotKnownWithoutTheInsulationInABundle(int awg) {
        assertThat(bundled(awg, null).isKnown()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {26, 28, 30, 25, 1, 0, -3})
    void isNotKnownForAGaugeOutsideOfTheTable(int awg) {
        Ampacity ampacity = bundled(awg, 200.0);
        assertThat(ampacity.isKnown()).isFalse();
        assertThat(ampacity.outsideTable()).isTrue();
        assertThat(ampacity.source())
                .isEqualTo(
                        WireGauge.of(awg).label() + " is outside of FAA AC 43.13-1B Table 11-9, which has 24 to 2 AWG");
    }

    @ParameterizedTest
    @CsvSource({"21, 22, 3", "9, 10, 17", "3, 4, 68"})
    void isThatOfTheNextThinnerOneForAGaugeBetween(int awg, int taken, double ampere) {
        Ampacity ampacity = bundled(awg, 105.0);
        assertThat(ampacity.continuousA()).isEqualTo(ampere);
        assertThat(ampacity.source()).endsWith("value of " + taken + " AWG as the next thinner in it");
    }

    @ParameterizedTest
    @CsvSource({"105, 105 °C insulation", "210, 200 °C insulation"})
    void saysItsSourceInABundle(double insulationC, String column) {
        assertThat(Said.plain(bundled(22, insulationC).source()))
                .isEqualTo("FAA AC 43.13-1B Table 11-9, " + column + ", in a bundle at 70 °C");
    }

    /** “Maximum current for chassis wiring”, Handbook of Electronic Tables and Formulas, as printed with Floyd. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            8, 73
            9, 64
            10, 55
            11, 47
            12, 41
            13, 35
            14, 32
            15, 28
            16, 22
            17, 19
            18, 16
            19, 14
            20, 11
            21, 9
            22, 7
            23, 4.7
            24, 3.5
            25, 2.7
            26, 2.2
            27, 1.7
            28, 1.4
            29, 1.2
            30, 0.86
            """)
    void isThatOfChassisWiringInFreeAir(int awg, double ampere) {
        Ampacity ampacity = free(awg);
        assertThat(ampacity.continuousA()).isEqualTo(ampere);
        assertThat(ampacity.source()).contains("chassis wiring").endsWith("for short wires lying free");
    }

    @ParameterizedTest
    @ValueSource(ints = {7, 0, 31, 40})
    void isNotKnownInFreeAirForAGaugeOutsideOfTheTable(int awg) {
        assertThat(free(awg).isKnown()).isFalse();
        assertThat(free(awg).outsideTable()).isTrue();
    }

    private static Ampacity bundled(int awg, @Nullable Double insulationC) {
        return Ampacity.of(new WireRun(awg, Length.ofMm(500), 2, Routing.BUNDLE, insulationC));
    }

    private static Ampacity free(int awg) {
        return Ampacity.of(new WireRun(awg, Length.ofMm(500), 2, Routing.FREE_AIR, null));
    }
}
