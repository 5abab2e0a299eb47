package dev.ledgerwing.core.balance;

import static dev.ledgerwing.core.balance.Balances.mirroredWing;
import static dev.ledgerwing.core.balance.Balances.panel;
import static dev.ledgerwing.core.balance.Balances.planform;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dev.ledgerwing.core.build.Surface;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanformTest {

    /** AGARD-B calibration model (AGARD AG-4/M3, 1955): D 0.163 ft, area 0.1841 ft^2 and MAC 0.3762 ft; to 0.1 per cent. */
    @Test
    void anEquilateralDelta() {
        double d = 0.163 * 304.8;
        double chord = 2 * Math.sqrt(3) * d;
        Planform delta = planform(panel(2 * d, chord, 0, chord, 0));
        assertThat(delta.areaMm2() / (304.8 * 304.8)).isCloseTo(0.1841, withPercentage(0.1));
        assertThat(delta.macMm() / 304.8).isCloseTo(0.3762, withPercentage(0.1));
    }

    /** ONERA M6 (AGARD AR-138), from memory: MAC 0.64607 m and aspect ratio 3.8; to 0.1 per cent. */
    @Test
    void aSweptWing() {
        double root = 805.9;
        double tip = root * 0.562;
        Planform wing = planform(panel(1196.3, root, tip, 1196.3 * Math.tan(Math.toRadians(30)), 0));
        assertThat(wing.macMm()).isCloseTo(646.07, withPercentage(0.1));
        assertThat(wing.aspectRatio()).isCloseTo(3.8, withPercentage(0.1));
    }

    /** By derivation: S 300 000 mm^2 a side, MAC 311.1111, at y 444.4444 and x 266.6667 mm. */
    @Test
    void onePanel() {
        Planform wing = planform(panel(1000, 400, 200, 600, 0));
        assertThat(wing.areaMm2()).isEqualTo(600_000);
        assertThat(wing.macMm()).isCloseTo(311.1111, within(1e-4));
        assertThat(wing.macYMm()).isCloseTo(444.4444, within(1e-4));
        assertThat(wing.macXMm()).isCloseTo(266.6667, within(1e-4));
    }

    /** A formula in circulation drops the square of the taper ratio and gives 355.6 for this wing. */
    @Test
    void doesNotDropTheSquareOfTheTaper() {
        assertThat(planform(panel(1000, 400, 200, 600, 0)).macMm())
                .isCloseTo(2.0 / 3 * 400 * (1 + 0.5 + 0.25) / 1.5, within(1e-9))
                .isNotCloseTo(355.6, within(40.0));
    }

    /** By derivation, checked by integration: MAC 270.943396, at y 551.572327 and x 14.528302 mm. */
    @Test
    void twoPanels() {
        Planform wing = planform(panel(500, 300, 300, 0, 0), panel(700, 300, 180, 60, 0));
        assertThat(wing.areaMm2()).isEqualTo(636_000);
        assertThat(wing.macMm()).isCloseTo(270.943396, within(1e-6));
        assertThat(wing.macYMm()).isCloseTo(551.572327, within(1e-6));
        assertThat(wing.macXMm()).isCloseTo(14.528302, within(1e-6));
        assertThat(wing.macMm()).as("not the geometric mean chord").isGreaterThan(wing.areaMm2() / wing.spanMm());
    }

    @Test
    void areaAndSpanAreThoseSeenFromAbove() {
        Planform wing = planform(panel(1000, 300, 300, 0, 60));
        assertThat(wing.spanMm()).isCloseTo(1000, within(1e-9));
        assertThat(wing.areaMm2()).isCloseTo(300_000, within(1e-6));
        assertThat(wing.macMm()).isEqualTo(300);
        assertThat(wing.macZMm()).as("half way up").isCloseTo(433.0127, within(1e-4));
        assertThat(wing.dihedralDeg()).isEqualTo(60);
    }

    @Test
    void aSurfaceOfOneSideIsNotDoubled() {
        Planform half = Planform.of(new Surface(Balances.at(0, 0, 0), false, List.of(panel(1000, 300, 300, 0, 0))))
                .orElseThrow();
        assertThat(half.areaMm2()).isEqualTo(300_000);
        assertThat(half.spanMm()).isEqualTo(1000);
    }

    @Test
    void anUprightPanelHasNoAreaAndASurfaceOfNothingElseNoChord() {
        assertThat(Planform.of(mirroredWing(0, panel(300, 200, 150, 40, 90)))).isEmpty();
        Planform withFin = planform(panel(1000, 300, 300, 0, 0), panel(150, 300, 200, 50, 90));
        assertThat(withFin.macMm()).isEqualTo(300);
        assertThat(withFin.spanMm()).isEqualTo(2000);
        assertThat(withFin.sweepDeg()).isZero();
    }

    @Test
    void sweepIsThatOfTheQuarterChord() {
        assertThat(planform(panel(1000, 400, 200, 50, 0)).sweepDeg()).isCloseTo(0, within(1e-12));
        assertThat(planform(panel(1000, 300, 300, 1000, 0)).sweepDeg()).isCloseTo(45, within(1e-9));
    }

    @Test
    void givesLeadingEdgeAndChordAtASpanStation() {
        Planform wing = Planform.of(mirroredWing(520, panel(500, 300, 300, 0, 0), panel(700, 300, 180, 70, 0)))
                .orElseThrow();
        assertThat(wing.chordAt(250)).contains(new Planform.Chord(520, 300));
        assertThat(wing.chordAt(-850)).contains(new Planform.Chord(555, 240));
        assertThat(wing.chordAt(1200.1)).isEmpty();
    }

    @Test
    void drawsTheOutlineOfOneSide() {
        assertThat(planform(panel(1000, 400, 200, 600, 0)).outline())
                .containsExactly(
                        new Planform.PlanPoint(0, 0),
                        new Planform.PlanPoint(600, 1000),
                        new Planform.PlanPoint(800, 1000),
                        new Planform.PlanPoint(400, 0));
    }
}
