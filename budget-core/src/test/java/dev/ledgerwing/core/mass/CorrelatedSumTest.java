package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CorrelatedSumTest {

    /**
     * EA-4/02, supplement S2: calibration of a weight of nominal 10 kg. Standard uncertainties in mg: standard 45/2, drift 15/sqrt(3),
     * difference 14.2, eccentricity and buoyancy 10/sqrt(3) each. Published as 29.1 mg.
     */
    @Test
    void combinesThePublishedBudgetOfATenKilogramWeight() {
        double u = Math.sqrt(tenKilogramWeight(14.2).variance());
        assertThat(u).isCloseTo(29.1, within(0.05));
    }

    /** The same with the difference at 25/sqrt(3): 29.3 mg, from memory. */
    @Test
    void combinesTheVariantOfThatBudget() {
        double u = Math.sqrt(tenKilogramWeight(25 / Math.sqrt(3)).variance());
        assertThat(u).isCloseTo(29.3, within(0.05));
    }

    private static CorrelatedSum tenKilogramWeight(double difference) {
        double rectangular = Math.sqrt(3);
        return CorrelatedSum.of(0, List.of(22.5, 15 / rectangular, difference, 10 / rectangular, 10 / rectangular));
    }

    /** Against JCGM 100:2008, equation 16, pair by pair. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.3, 1})
    void equalsTheSumOverEveryPair(double correlation) {
        List<Double> all = new Random(4).doubles(200, 0, 50).boxed().toList();
        double pairs = 0;
        for (int i = 0; i < all.size(); i++) {
            for (int j = 0; j < all.size(); j++) {
                pairs += (i == j ? 1 : correlation) * all.get(i) * all.get(j);
            }
        }
        assertThat(CorrelatedSum.of(correlation, all).variance()).isCloseTo(pairs, within(1e-9 * pairs));
    }

    @Test
    void isTheSameToTheLastDigitInAnyOrder() {
        List<Double> all =
                new ArrayList<>(new Random(5).doubles(500, 0, 50).boxed().toList());
        CorrelatedSum first = CorrelatedSum.of(0.3, all);
        Collections.shuffle(all, new Random(6));
        assertThat(CorrelatedSum.of(0.3, all)).isEqualTo(first);
    }

    @Test
    void takesOneOutAgain() {
        CorrelatedSum two = CorrelatedSum.of(0.3, List.of(3.0, 4.0));
        assertThat(two.minus(4).variance()).isCloseTo(9, within(1e-12));
        assertThat(two.minus(4).minus(3).variance()).isZero();
    }
}
