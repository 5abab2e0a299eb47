package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalCurveTest {

    @Test
    void agreesWithAnIndependentImplementationFromTailToTail() {
        NormalDistribution reference = new NormalDistribution();
        for (int i = -3700; i <= 900; i++) {
            double deviations = i / 100.0;
            double expected = reference.cumulativeProbability(deviations);
            assertThat(NormalCurve.atMost(deviations))
                    .as("at %s standard deviations", deviations)
                    .isCloseTo(expected, within(1e-11 * expected));
        }
    }

    @Test
    void agreesOnTheComplementaryErrorFunctionWhereTheMethodChanges() {
        for (int i = -300; i <= 300; i++) {
            double x = 2 + i / 1000.0;
            double expected = Erf.erfc(x);
            assertThat(NormalCurve.complement(x)).as("erfc(%s)", x).isCloseTo(expected, within(1e-12 * expected));
        }
    }

    /** Abramowitz and Stegun, table 26.1, from memory: P(1) = 0.841344746068543, P(2) = 0.977249868051821. */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "1, 0.841344746068543", "2, 0.977249868051821", "-1, 0.158655253931457"})
    void givesTheTabulatedProbabilities(double deviations, double probability) {
        assertThat(NormalCurve.atMost(deviations)).isCloseTo(probability, within(1e-15));
    }

    @Test
    void putsNinetyFivePerCentBetweenTheTwoHalfWidths() {
        double inside = NormalCurve.atMost(NormalCurve.HALF_WIDTH_95) - NormalCurve.atMost(-NormalCurve.HALF_WIDTH_95);
        assertThat(inside).isCloseTo(0.95, within(1e-15));
    }

    @Test
    void isNeverOutsideZeroToOne() {
        assertThat(NormalCurve.atMost(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(NormalCurve.atMost(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(NormalCurve.atMost(-1e300)).isZero();
        assertThat(NormalCurve.atMost(60)).isEqualTo(1);
    }
}
