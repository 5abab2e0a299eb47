package dev.ledgerwing.core.balance;

import static dev.ledgerwing.core.balance.Balances.at;
import static dev.ledgerwing.core.balance.Balances.certain;
import static dev.ledgerwing.core.balance.Balances.mirrored;
import static dev.ledgerwing.core.balance.Balances.sized;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class InertiaTest {

    private static final double EXACT = 1e-12;
    /** One lb in^2 in kg m^2. */
    private static final double LB_IN2 = 2.92639653e-4;

    /** Example 13.1 of classical-mechanics texts: 1/6 M b^2 about the centre of a cube; about a corner, from memory, 2/3 and +1/4. */
    @Test
    void aCubeAboutItsCentreAndAboutItsCorner() {
        InertiaTensor centre =
                inertia(sized(certain("cube", 6000, 0), 1000, 1000, 1000)).aboutCg();
        assertThat(centre).isEqualTo(new InertiaTensor(1, 1, 1, 0, 0, 0));
        InertiaTensor corner = centre.about(6, 500, 500, 500);
        assertThat(corner.ixx()).isCloseTo(4, within(EXACT));
        assertThat(corner.izz()).isCloseTo(4, within(EXACT));
        assertThat(corner.ixy()).isCloseTo(1.5, within(EXACT));
        assertThat(corner.ixz()).isCloseTo(1.5, within(EXACT));
        assertThat(corner.matrix()[0][1])
                .as("the element of the tensor is -1/4 M b^2")
                .isCloseTo(-1.5, within(EXACT));
        assertThat(corner.about(0, 1, 1, 1)).isEqualTo(corner);
    }

    /** By derivation from the parallel-axis theorem: eight small cubes make the large one. */
    @Test
    void aCubeCutIntoEightIsTheSameCube() {
        List<PartLine> eighths = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            double x = (i & 1) == 0 ? -250 : 250;
            double y = (i & 2) == 0 ? -250 : 250;
            double z = (i & 4) == 0 ? -250 : 250;
            eighths.add(sized(certain("c" + i, 750, at(x, y, z)), 500, 500, 500));
        }
        InertiaTensor whole = inertia(eighths.toArray(PartLine[]::new)).aboutCg();
        assertThat(whole.ixx()).isCloseTo(1, within(EXACT));
        assertThat(whole.iyy()).isCloseTo(1, within(EXACT));
        assertThat(whole.izz()).isCloseTo(1, within(EXACT));
        assertThat(whole.ixz()).isCloseTo(0, within(EXACT));
    }

    /** SFTE Reference Handbook, 2013, chapter 7: Ixz = + integral of x z dm. Two flipped axes leave it, one changes its sign. */
    @Test
    void flippingBothXAndZLeavesIxzAndFlippingOneTurnsIt() {
        double asBuilt = tilted(station -> station).ixz();
        assertThat(asBuilt).isPositive();
        assertThat(tilted(InertiaTest::flipX).ixz()).isCloseTo(-asBuilt, within(EXACT));
        assertThat(tilted(InertiaTest::flipZ).ixz()).isCloseTo(-asBuilt, within(EXACT));
        assertThat(tilted(station -> flipX(flipZ(station))).ixz()).isCloseTo(asBuilt, within(EXACT));
        InertiaTensor body = tilted(station -> station).inBodyAxes();
        assertThat(body.ixz()).isEqualTo(asBuilt);
        assertThat(body.ixy()).isEqualTo(-tilted(station -> station).ixy());
    }

    private static InertiaTensor tilted(UnaryOperator<Station> flipped) {
        return inertia(
                        certain("a", 500, flipped.apply(at(-300, 20, -50))),
                        certain("b", 700, flipped.apply(at(250, -60, 80))))
                .aboutCg();
    }

    private static Station flipX(Station station) {
        return at(-station.x().mm(), station.y().mm(), station.z().mm());
    }

    private static Station flipZ(Station station) {
        return at(station.x().mm(), station.y().mm(), -station.z().mm());
    }

    /** By derivation: 2 kg at 0.5 m either side, and nothing from where a line that is not mirrored has its pieces. */
    @Test
    void aMirroredLineCountsAtBothSides() {
        InertiaTensor pair =
                inertia(mirrored("servo", 4, 1000, at(0, 0, 0), 500)).aboutCg();
        assertThat(pair.ixx()).isCloseTo(1, within(EXACT));
        assertThat(pair.iyy()).isZero();
        assertThat(pair.izz()).isCloseTo(1, within(EXACT));
    }

    /**
     * Kotikalpudi and others, Swing Tests for Estimation of Moments of Inertia, University of Minnesota: a flying wing of 5.44 kg with
     * 8543.5, 1245.83 and 8118.42 lb in^2. No body is ruled out, but the masses would lie 8.35 inches above and below the CG.
     */
    @Test
    void aPublishedFlyingWingIsTooThickToBelieve() {
        InertiaTensor swung = new InertiaTensor(8543.5 * LB_IN2, 1245.83 * LB_IN2, 8118.42 * LB_IN2, 0, 0, 0);
        double massKg = 11.99 * 0.45359237;
        assertThat(swung.isPossible()).isTrue();
        assertThat(swung.rmsHeightMm(massKg) / 25.4).isCloseTo(8.35, within(0.005));
        assertThat(swung.isFlat()).isFalse();
    }

    /** Beard and McLain, Small Unmanned Aircraft, appendix E.2: 13.5 kg, 0.8244, 1.135 and 1.759 kg m^2. */
    @Test
    void aPublishedAeroplaneIsFlatEnough() {
        assertThat(new InertiaTensor(0.8244, 1.135, 1.759, 0, 0.1204, 0).isFlat())
                .isTrue();
    }

    @Test
    void noMomentMayExceedTheOtherTwo() {
        assertThat(new InertiaTensor(1, 1, 2, 0, 0, 0).isPossible())
                .as("a flat body")
                .isTrue();
        assertThat(new InertiaTensor(1, 1, 2.01, 0, 0, 0).isPossible()).isFalse();
    }

    /** A line above 2 per cent of the mass without a size leaves the moments at "at least"; a lighter one does not. */
    @Test
    void isAtLeastWhileAHeavyPartHasNoSize() {
        PartLine box = sized(certain("box", 1000, 0), 100, 100, 100);
        assertThat(inertia(box, certain("screw", 20, 100)).isAtLeast()).isFalse();
        Inertia open = inertia(box, certain("pack", 21, 100));
        assertThat(open.isAtLeast()).isTrue();
        assertThat(open.withoutSize()).extracting(row -> row.row().line()).containsExactly("pack");
        assertThat(inertia(box, Ledgers.certain("nowhere", 5)).isAtLeast()).isTrue();
    }

    @Test
    void asksWhereTheMassesLieTooHighForAnAeroplane() {
        List<PartLine> tower = new ArrayList<>();
        List<PartLine> wing = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            tower.add(certain("p" + i, 100, at(10 * i, 30 * i, 50 * i)));
            wing.add(certain("p" + i, 100, at(50 * i, 100 * i, 3 * i)));
        }
        Finding finding = Balances.finding("balance.inertia", Balances.within(0, 500, tower.toArray(PartLine[]::new)));
        assertThat(finding.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(finding.sentence()).contains("too tall for an aeroplane");
        assertThat(Balances.findings("balance.inertia", Balances.within(0, 500, wing.toArray(PartLine[]::new))))
                .isEmpty();
    }

    private static Inertia inertia(PartLine... lines) {
        return BalanceStatement.of(Ledgers.with(lines)).design().inertia().orElseThrow();
    }
}
