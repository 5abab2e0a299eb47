package dev.ledgerwing.core.balance;

import static dev.ledgerwing.core.balance.Balances.geometry;
import static dev.ledgerwing.core.balance.Balances.mirroredWing;
import static dev.ledgerwing.core.balance.Balances.panel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.build.Tail;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class NeutralPointTest {

    private static final Surface WING = mirroredWing(500, panel(1000, 200, 200, 0, 0));

    /** Anderson, Introduction to Flight, examples 7.3, 7.5 and 7.6, from memory: 0.34, 0.516 and 0.166. */
    @Test
    void theTextbookFormFromATailVolume() {
        TailVolume volume = TailVolume.of(0.17, 0.02, 0.1, 0.1);
        assertThat(volume.ratio()).isCloseTo(0.34, within(1e-12));
        double neutralPoint = volume.neutralPoint(0.24, 0.1 / 0.08, 0.35);
        assertThat(neutralPoint).isCloseTo(0.51625, within(1e-9));
        assertThat(neutralPoint - 0.35).isCloseTo(0.16625, within(1e-9));
    }

    /** By derivation from the same inputs, the tail arm counted from the aerodynamic centre: 0.493, a smaller margin. */
    @Test
    void theExactFormLiesAheadOfTheTextbookForm() {
        double share = 0.02 / 0.1 * (0.1 / 0.08) * (1 - 0.35);
        StabiliserLift tail = new StabiliserLift(share, 0.17 / 0.1 + 0.35 - 0.24);
        assertThat(0.24 + tail.neutralPointShift()).isCloseTo(0.493, within(0.0005));
    }

    /** By derivation: 2 pi AR / (2 + sqrt(4 + AR^2)) with AR 10, and twice that over 10 pi. */
    @Test
    void liftSlopeAndDownwashFollowFromTheShape() {
        Planform wing = Planform.of(WING).orElseThrow();
        assertThat(wing.aspectRatio()).isEqualTo(10);
        assertThat(LiftSlope.perRadian(wing)).isCloseTo(5.15, within(0.005));
        assertThat(LiftSlope.downwash(wing)).isCloseTo(0.328, within(0.0005));
        Planform swept =
                Planform.of(mirroredWing(0, panel(1000, 200, 200, 500, 0))).orElseThrow();
        assertThat(LiftSlope.perRadian(swept)).isLessThan(LiftSlope.perRadian(wing));
    }

    @Test
    void aFlyingWingHasItsQuarterPointAndTheBodyShift() {
        NeutralPoint alone = neutralPoint(null);
        assertThat(alone.percentMac()).isEqualTo(25);
        assertThat(alone.xMm()).isEqualTo(550);
        Geometry bodied = new Geometry(WING, null, null, null, null, null, null, null, null);
        assertThat(NeutralPoint.of(bodied).orElseThrow().percentMac())
                .isEqualTo(25 + NeutralPoint.BODY_SHIFT_PERCENT_MAC);
    }

    /** Common practice, no source: with a lifting stabiliser 50 to 65 per cent of the chord is a usable range. */
    @Test
    void aLargeTailFarBackPutsTheNeutralPointBehindSixtyFivePerCent() {
        NeutralPoint lifting = neutralPoint(new Tail(mirroredWing(1400, panel(380, 150, 150, 0, 0)), 0.9));
        assertThat(lifting.percentMac()).isBetween(70.0, 110.0);
        assertThat(lifting.staticMarginPercent(lifting.wing().xMm(60))).isPositive();
    }

    @Test
    void aCanardPutsItAheadOfTheWingsOwn() {
        NeutralPoint canard = neutralPoint(new Tail(mirroredWing(0, panel(300, 120, 120, 0, 0)), 1.0));
        assertThat(canard.isCanard()).isTrue();
        assertThat(canard.percentMac()).isLessThan(25);
        assertThat(canard.caution()).contains("canard");
    }

    /** By derivation: a V-tail has the pitch effect of a flat tail of its true size times cos^2 of its dihedral. */
    @Test
    void aVeeTailLiftsByTheSquareOfTheCosine() {
        StabiliserLift flat = stabiliser(0);
        StabiliserLift vee = stabiliser(40);
        double cos = Math.cos(Math.toRadians(40));
        assertThat(vee.share()).isCloseTo(flat.share() * cos * cos, within(1e-12));
        assertThat(vee.armInChords()).isCloseTo(flat.armInChords(), within(1e-12));
        assertThat(stabiliser(90).share()).isZero();
    }

    private static StabiliserLift stabiliser(double dihedralDeg) {
        return StabiliserLift.of(
                Planform.of(WING).orElseThrow(),
                new Tail(mirroredWing(1400, panel(300, 150, 150, 0, dihedralDeg)), 0.9));
    }

    @Test
    void thereIsNoneWithoutAWingSeenFromAbove() {
        assertThat(NeutralPoint.of(Geometry.NONE)).isEmpty();
        assertThat(NeutralPoint.of(geometry(mirroredWing(0, panel(300, 200, 200, 0, 90)), null, null, null)))
                .isEmpty();
    }

    private static NeutralPoint neutralPoint(@Nullable Tail tail) {
        return NeutralPoint.of(geometry(WING, tail, null, null)).orElseThrow();
    }
}
