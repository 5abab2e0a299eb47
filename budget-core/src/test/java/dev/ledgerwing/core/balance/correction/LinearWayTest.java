package dev.ledgerwing.core.balance.correction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.balance.BalanceBand;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.balance.correction.LinearWay.Effect;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The closed forms. They hold in any unit of mass and length, so published cases stand in their own. */
class LinearWayTest {

    private static final double FOREVER = Double.POSITIVE_INFINITY;

    private static Aim aim(double mass, double x, double from, double to) {
        BalanceBand band = new BalanceBand(BalanceBand.Source.DECLARED, from, to);
        return new Aim(new FlightPoint("c", "C", MassState.BASIC, mass, x, 0), band, from, to, false);
    }

    private static LinearWay way(double moment, double mass, double bandPerUnit) {
        return new LinearWay(List.of(new Effect(moment, mass)), bandPerUnit, Ranges.EVERYTHING, amount -> {
            throw new AssertionError("no step is taken here");
        });
    }

    /** By derivation: 5.000 kg at 360.9 mm, wanted 350.0 mm, ballast at 60.0 mm: 0.187931 kg. */
    @Test
    void ballastForASmallAirframe() {
        Aim aim = aim(5000, 360.9, 0, 350);
        Ranges landing = way(60, 1, 0).landing(List.of(aim));
        assertThat(landing.least()).isCloseTo(187.931, within(5e-4));
        assertThat(way(60, 1, 0).after(aim.point(), 0, landing.least()).xMm()).isCloseTo(350, within(1e-9));
    }

    /** By derivation: the same airframe, moving a pack of 0.8 kg instead: 68.125 mm forward. */
    @Test
    void movingAPackInstead() {
        Ranges landing = way(800, 0, 0).landing(List.of(aim(5000, 360.9, 0, 350)));
        assertThat(landing.greatest()).isCloseTo(-68.125, within(1e-9));
    }

    /**
     * FAA-H-8083-1B, chapter 7, permanent ballast (partly from memory): 1876 lb at +32.2 in, forward limit +33.0 in, ballast at station 228: 7.6964
     * lb, printed 7.7.
     */
    @Test
    void permanentBallast() {
        Aim aim = aim(1876, 32.2, 33.0, 46.0);
        double ballast = way(228, 1, 0).landing(List.of(aim)).least();
        assertThat(ballast).isCloseTo(7.6964, within(5e-5));
        assertThat(way(228, 1, 0).after(aim.point(), 0, ballast).xMm()).isCloseTo(33.0, within(1e-9));
    }

    /** FAA-H-8083-1B, figure 2-11 (partly from memory): 500 lb balance at 72 in; 200 lb move 55 in for 50 in. */
    @Test
    void aLeverWithThreeWeights() {
        Ranges landing = way(200, 0, 0).landing(List.of(aim(500, 72, 50, 50)));
        assertThat(landing.least()).isCloseTo(-55, within(1e-9));
        assertThat(landing.greatest()).isCloseTo(-55, within(1e-9));
    }

    /** By derivation: s = (x - x_LEMAC - p c)/(1 - mu). 4 kg with a wing of 1 kg, 30 mm behind the aft limit: 40 mm. */
    @Test
    void aWingTakesItsBandAndItsMassAlong() {
        Ranges landing = way(1000, 0, 1).landing(List.of(aim(4000, 630, 560, 600)));
        assertThat(landing.least()).isCloseTo(30 / (1 - 0.25), within(1e-9));
        assertThat(landing.greatest()).isCloseTo(70 / (1 - 0.25), within(1e-9));
    }

    /** By derivation: s = c (h - T)/(1 - mu - K/(1 + K)), with mu 0.25 and K 0.2. */
    @Test
    void aBandFromTheNeutralPointStaysBehindTheWing() {
        double follows = 1 - 0.2 / 1.2;
        Ranges landing = way(1000, 0, follows).landing(List.of(aim(4000, 630, 560, 600)));
        assertThat(landing.least()).isCloseTo(30 / (1 - 0.25 - 0.2 / 1.2), within(1e-9));
    }

    /** A flying wing whose every gram moves with the wing. */
    @Test
    void shiftingEverythingShiftsNothing() {
        assertThat(way(4000, 0, 1).landing(List.of(aim(4000, 630, 560, 600))).isEmpty())
                .isTrue();
        assertThat(way(4000, 0, 1).landing(List.of(aim(4000, 580, 560, 600)))).isEqualTo(Ranges.EVERYTHING);
    }

    @Test
    void ballastOnTheWrongSideWouldHaveToBeNegative() {
        Ranges landing = way(900, 1, 0).landing(List.of(aim(5000, 360.9, 0, 350)));
        assertThat(landing.greatest()).isNegative();
    }

    @Test
    void everyCaseHasToLand() {
        LinearWay both = new LinearWay(
                List.of(new Effect(800, 0), new Effect(800, 0)), 0, Ranges.between(-FOREVER, FOREVER), amount -> {
                    throw new AssertionError("no step is taken here");
                });
        Aim noseHeavy = aim(5000, 330, 340, 350);
        Aim tailHeavy = aim(5000, 360, 340, 350);
        assertThat(both.landing(List.of(noseHeavy, tailHeavy)).isEmpty()).isTrue();
        assertThat(both.landing(List.of(tailHeavy, tailHeavy)).least()).isCloseTo(-125, within(1e-9));
    }

    @Test
    void aPartThatIsNotAboardCannotHelp() {
        assertThat(way(0, 0, 0).landing(List.of(aim(5000, 360, 340, 350))).isEmpty())
                .isTrue();
        assertThat(way(0, 0, 0).landing(List.of(aim(5000, 345, 340, 350)))).isEqualTo(Ranges.EVERYTHING);
    }
}
