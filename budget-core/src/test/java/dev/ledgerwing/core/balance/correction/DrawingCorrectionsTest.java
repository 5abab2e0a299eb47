package dev.ledgerwing.core.balance.correction;

import static dev.ledgerwing.core.Said.plain;
import static dev.ledgerwing.core.balance.correction.Trims.drawn;
import static dev.ledgerwing.core.balance.correction.Trims.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.balance.NeutralPoint;
import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What is done on the drawing: shifting the wing and lengthening the nose. A wing of 300 mm chord from station 500 mm. */
class DrawingCorrectionsTest {

    private static final BalanceLimits A_QUARTER_TO_A_THIRD = BalanceLimits.ofPercentMac(25, 33);

    /** 4 kg, 1 kg of it the wing at its leading edge and 120 mm; the rest placed so that all balance at {@code cgMm}. */
    private static Build balancedAt(double cgMm, Geometry geometry) {
        double rest = (4000 * cgMm - 1000 * 620 - 1000 * 120) / 2000;
        return Ledgers.with()
                .withAssemblies(Trims.assemblies())
                .withLines(List.of(
                        part("wing", "wing", Category.STRUCTURE, 1000, 620),
                        part("nose", "nose", Category.PROPULSION, 1000, 120),
                        part("rest", "fuselage", Category.STRUCTURE, 2000, rest)))
                .withGeometry(geometry);
    }

    private static Correction offer(Build build, CorrectionKind kind) {
        return CorrectionFinder.of(build).offers().stream()
                .filter(offer -> offer.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static double percentMac(Build build) {
        BalanceStatement statement = BalanceStatement.of(build);
        return Objects.requireNonNull(statement.shape().percentMac(cgMm(build)));
    }

    private static double cgMm(Build build) {
        return BalanceStatement.of(build)
                .design()
                .cg(MassState.BASIC)
                .orElseThrow()
                .xMm();
    }

    private static Build wingShifted(Build build, double byMm) {
        return new ShiftWing(Length.ofMm(byMm), true).on(build, () -> "none");
    }

    /** Common practice, no source: moving the wing forward moves the CG aft in per cent of the chord. */
    @Test
    void movingTheWingForwardMovesTheCgAftOnTheChord() {
        Build build = balancedAt(590, drawn(A_QUARTER_TO_A_THIRD, null));
        Build forward = wingShifted(build, -20);
        assertThat(cgMm(forward))
                .as("in millimetres it goes forward, with the mass of the wing")
                .isEqualTo(585);
        assertThat(percentMac(forward)).isGreaterThan(percentMac(build));
    }

    /**
     * By derivation: from 40 % to p = 32 % (the aft limit and 1 % inward) needs s = (x - x_LEMAC - p c)/(1 - mu) = 24 / (1 - 0.25) =
     * 32 mm; the 24 mm of a wing without mass fall short.
     */
    @Test
    void theMassOfTheWingGoesAlong() {
        Build build = balancedAt(620, drawn(A_QUARTER_TO_A_THIRD, null));
        assertThat(percentMac(build)).isCloseTo(40, within(1e-9));
        assertThat(percentMac(wingShifted(build, 32))).isCloseTo(32, within(1e-9));
        assertThat(percentMac(wingShifted(build, 24))).isCloseTo(34, within(1e-9));
        Correction shift = offer(build, CorrectionKind.SHIFT_WING);
        assertThat(plain(shift.sentence(Figures.METRIC)))
                .isEqualTo("Shift the wing 32 mm aft, with everything that moves with it.");
        assertThat(shift.cost()).isEqualTo(Mass.ZERO);
        assertThat(shift.declareAgain()).singleElement().asString().contains("declare them again");
    }

    /** By derivation: s = c (h - T)/(1 - mu - K/(1 + K)), T the neutral point before the shift minus the wanted margin. */
    @Test
    void aBandFromTheNeutralPointChangesWithTheTailArm() {
        Build far = balancedAt(640, drawn(null, new StaticMargin(5, 15)));
        NeutralPoint neutralPoint =
                Objects.requireNonNull(BalanceStatement.of(far).shape().neutralPoint());
        double leverage = Objects.requireNonNull(neutralPoint.stabiliser()).leverage();
        double h = percentMac(far) / 100;
        double t = (neutralPoint.percentMac() - 5 - 1) / 100;
        double s = 300 * (h - t) / (1 - 0.25 - leverage);
        assertThat(s).isGreaterThan(1);
        Build shifted = wingShifted(far, s);
        double margin = Objects.requireNonNull(
                        BalanceStatement.of(shifted).shape().neutralPoint())
                .staticMarginPercent(cgMm(shifted));
        assertThat(margin).as("1 %% more than the least").isCloseTo(6, within(0.001));
        assertThat(offer(far, CorrectionKind.SHIFT_WING).steps().get(0).movementMm())
                .isEqualTo(Math.ceil(s));
        assertThat(offer(far, CorrectionKind.SHIFT_WING).declareAgain()).isEmpty();
    }

    @Test
    void limitsInMillimetresMoveWithTheWing() {
        Build build = balancedAt(620, drawn(BalanceLimits.ofStations(Length.ofMm(575), Length.ofMm(599)), null));
        Correction shift = offer(build, CorrectionKind.SHIFT_WING);
        BalanceLimits after =
                Objects.requireNonNull(shift.on(build, () -> "none").geometry().balanceLimits());
        assertThat(after).isEqualTo(BalanceLimits.ofStations(Length.ofMm(575 + 32), Length.ofMm(599 + 32)));
        assertThat(shift.declareAgain()).isNotEmpty();
    }

    @Test
    void aFlyingWingWhoseEveryPartMovesWithItCannotShift() {
        Build build = Ledgers.with()
                .withAssemblies(Trims.assemblies())
                .withLines(List.of(part("all", "wing", Category.STRUCTURE, 4000, 620)))
                .withGeometry(drawn(A_QUARTER_TO_A_THIRD, null));
        assertThat(CorrectionFinder.of(build).offers())
                .extracting(Correction::kind)
                .doesNotContain(CorrectionKind.SHIFT_WING);
    }

    /** By derivation, at basic mass: (4000 x 620 - 1000 e + 0.4 e (380 - e/2))/(4000 + 0.4 e) = 596 mm; e = 86.98 mm. */
    @Test
    void aLongerNoseCarriesItsOwnStructure() {
        Build build = balancedAt(620, drawn(A_QUARTER_TO_A_THIRD, null));
        Correction longer = offer(build, CorrectionKind.LENGTHEN_NOSE);
        int e = (int) longer.steps().get(0).movementMm();
        assertThat(e).isEqualTo(87);
        double moment = 4000 * 620.0 - 1000 * e + 0.4 * e * (380 - e / 2.0);
        assertThat(cgMm(longer.after())).isCloseTo(moment / (4000 + 0.4 * e), within(1e-3));
        assertThat(cgMm(longer.after())).isBetween(595.5, 596.0);
        assertThat(longer.cost()).isEqualTo(Mass.ofGrams(0.4 * e));
        assertThat(longer.declareAgain()).singleElement().asString().contains("neutral point");
        double shorter = e - 1;
        assertThat((4000 * 620.0 - 1000 * shorter + 0.4 * shorter * (380 - shorter / 2)) / (4000 + 0.4 * shorter))
                .as("a millimetre less is too little")
                .isGreaterThan(596);
    }

    @Test
    void aNoseHeavyAirframeGetsNoLongerNose() {
        Build build = balancedAt(560, drawn(A_QUARTER_TO_A_THIRD, null));
        assertThat(CorrectionFinder.of(build).offers())
                .extracting(Correction::kind)
                .contains(CorrectionKind.SHIFT_WING)
                .doesNotContain(CorrectionKind.LENGTHEN_NOSE);
    }
}
