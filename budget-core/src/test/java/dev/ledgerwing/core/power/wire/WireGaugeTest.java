package dev.ledgerwing.core.power.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WireGaugeTest {

    private static final double M_PER_1000_FT = 304.8;

    /** Ohms of 1000 ft at 20 °C as published with Floyd, Electric Circuit Fundamentals, 2nd edition (NBS Handbook 100 has the same). */
    @ParameterizedTest
    @CsvSource(textBlock = """
            8,  3.2636, 8.3656, 0.6282
            9,  2.9064, 6.6342, 0.7921
            10, 2.5882, 5.2612, 0.9989
            11, 2.3048, 4.1723, 1.26
            12, 2.0525, 3.3088, 1.588
            13, 1.8278, 2.6240, 2.003
            14, 1.6277, 2.0809, 2.525
            15, 1.4495, 1.6502, 3.184
            16, 1.2908, 1.3087, 4.016
            17, 1.1495, 1.0378, 5.064
            18, 1.0237, 0.8230, 6.385
            19, 0.9116, 0.6527, 8.051
            20, 0.8118, 0.5176, 10.15
            21, 0.7229, 0.4105, 12.8
            22, 0.6438, 0.3255, 16.14
            23, 0.5733, 0.2582, 20.36
            24, 0.5106, 0.2047, 25.67
            25, 0.4547, 0.1624, 32.37
            26, 0.4049, 0.1288, 40.81
            27, 0.3606, 0.1021, 51.47
            28, 0.3211, 0.0810, 64.9
            29, 0.2859, 0.0642, 81.83
            30, 0.2546, 0.0509, 103.2
            """)
    void hasThePublishedResistanceWithinAThousandth(int awg, double diameterMm, double areaMm2, double ohmPer1000Ft) {
        WireGauge gauge = WireGauge.of(awg);
        assertThat(gauge.diameterMm()).isCloseTo(diameterMm, within(0.00005));
        assertThat(gauge.areaMm2()).isCloseTo(areaMm2, within(0.00005));
        assertThat(gauge.ohmPerM(20) * M_PER_1000_FT).isCloseTo(ohmPer1000Ft, withinPercentage(0.1));
    }

    /** The two gauges that ASTM B258 sets out from. */
    @Test
    void meetsTheFixedPointsOfTheSeries() {
        assertThat(WireGauge.of(36).diameterMm()).isEqualTo(0.0050 * 25.4);
        assertThat(WireGauge.of(-3).diameterMm()).isCloseTo(0.4600 * 25.4, within(1e-9));
    }

    /** ASTM B258: 92 to the power of 1/39. */
    @Test
    void growsByTheSameFactorFromGaugeToGauge() {
        for (int awg = -3; awg < 40; awg++) {
            assertThat(WireGauge.of(awg).diameterMm() / WireGauge.of(awg + 1).diameterMm())
                    .isCloseTo(1.1229322, within(5e-8));
        }
    }

    /** 10 AWG, 1.175 ohm per 1000 ft at 65 °C: published in a maker's table whose other column holds at 20 °C. */
    @Test
    void resistsMoreWhenItIsWarmer() {
        assertThat(WireGauge.of(10).ohmPerM(65) * M_PER_1000_FT).isCloseTo(1.175, withinPercentage(0.1));
    }

    /** FAA AC 43.13-1B writes the same law of copper as (234.5 + T) / 254.5. */
    @ParameterizedTest
    @CsvSource({"-40", "0", "20", "65", "105", "200"})
    void agreesWithTheOtherWayToWriteTheLawOfCopper(double conductorC) {
        WireGauge gauge = WireGauge.of(22);
        assertThat(gauge.ohmPerM(conductorC) / gauge.ohmPerM(20))
                .isCloseTo((234.5 + conductorC) / 254.5, withinPercentage(0.1));
    }

    /** By derivation: 1 m of 1 mm2 is 1 cm3, and copper weighs 8.96 g/cm3. */
    @Test
    void weighsItsCopper() {
        assertThat(WireGauge.of(20).copperGPerM()).isCloseTo(0.5176 * 8.96, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({"22, 22 AWG", "1, 1 AWG", "0, 1/0 AWG", "-3, 4/0 AWG"})
    void isWrittenAsOnTheReel(int awg, String label) {
        assertThat(WireGauge.of(awg).label()).isEqualTo(label);
    }
}
