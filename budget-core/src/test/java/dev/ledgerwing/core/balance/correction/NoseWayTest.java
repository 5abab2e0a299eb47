package dev.ledgerwing.core.balance.correction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.balance.BalanceBand;
import dev.ledgerwing.core.balance.MassState;
import java.util.List;
import org.junit.jupiter.api.Test;

class NoseWayTest {

    private static final FlightPoint TAIL_HEAVY = new FlightPoint("c", "C", MassState.BASIC, 5000, 360, 0);

    private static NoseWay nose(double noseG, double perMm, double jointMm) {
        return new NoseWay(List.of(noseG), List.of(perMm), jointMm, amount -> {
            throw new AssertionError("no step is taken here");
        });
    }

    private static Aim aim(FlightPoint point, double from, double to) {
        return new Aim(point, new BalanceBand(BalanceBand.Source.DECLARED, from, to), from, to, false);
    }

    /** By derivation: (M x - m e + k e (x_j - e/2))/(M + k e), recomputed from the sum of moments. */
    @Test
    void theRootBringsTheSumOfMomentsToTheTarget() {
        double e = nose(1200, 0.4, 300).extension(0, TAIL_HEAVY, 345);
        double moment = 5000 * 360 - 1200 * e + 0.4 * e * (300 - e / 2);
        assertThat(moment / (5000 + 0.4 * e)).isCloseTo(345, within(1e-9));
        assertThat(e).isCloseTo(60.966, within(0.0005));
        assertThat(nose(1200, 0.4, 300).after(TAIL_HEAVY, 0, e).xMm()).isCloseTo(345, within(1e-9));
    }

    /** By derivation: with structure that weighs nothing it is the plain lever, M (x - x_t)/m. */
    @Test
    void withoutAnyStructureItIsALever() {
        assertThat(nose(1200, 0, 300).extension(0, TAIL_HEAVY, 345)).isCloseTo(5000 * 15 / 1200.0, within(1e-9));
    }

    @Test
    void aNoseThatCarriesNothingHelpsOnlyByItsStructure() {
        double e = nose(0, 0.4, 300).extension(0, TAIL_HEAVY, 345);
        double moment = 5000 * 360 + 0.4 * e * (300 - e / 2);
        assertThat(moment / (5000 + 0.4 * e)).isCloseTo(345, within(1e-9));
    }

    @Test
    void aNoseHeavyCaseWantsNoLongerNose() {
        FlightPoint noseHeavy = new FlightPoint("c", "C", MassState.BASIC, 5000, 330, 0);
        assertThat(nose(1200, 0.4, 300)
                        .landing(List.of(aim(noseHeavy, 340, 350)))
                        .isEmpty())
                .isTrue();
    }

    @Test
    void itStopsBeforeTheForwardLimit() {
        NoseWay nose = nose(1200, 0.4, 300);
        Ranges landing = nose.landing(List.of(aim(TAIL_HEAVY, 340, 350)));
        assertThat(nose.after(TAIL_HEAVY, 0, landing.least()).xMm()).isCloseTo(350, within(1e-9));
        assertThat(nose.after(TAIL_HEAVY, 0, landing.greatest()).xMm()).isCloseTo(340, within(1e-9));
    }

    @Test
    void itIsNotDrawnBeyondMeasure() {
        assertThat(nose(10, 0.01, 300)
                        .landing(List.of(aim(TAIL_HEAVY, 340, 345)))
                        .isEmpty())
                .isTrue();
    }
}
