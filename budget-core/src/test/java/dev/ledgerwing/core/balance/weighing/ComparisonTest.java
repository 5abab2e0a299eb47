package dev.ledgerwing.core.balance.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.balance.Axis;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** By derivation: x_r = (M_s x_s - M_l x_l)/(M_s - M_l), its uncertainty after JCGM 100:2008, eq. 10. */
class ComparisonTest {

    /** 1500 g at x = 200 mm, u = 4 g. */
    private static final JointMass LEDGER = along(1500, 300_000, new JointError(4, 1120, 0, 0));

    private static JointMass along(double massG, double momentGMm, JointError error) {
        return new JointMass(massG, Map.of(Axis.X, momentGMm), List.of(error));
    }

    /** What the scales say with u = 3 g of the same 1500 g and of one part more. */
    private static Comparison withPart(double massG, double xMm) {
        return new Comparison(along(1500 + massG, 300_000 + massG * xMm, new JointError(3, 840, 0, 0)), LEDGER, true);
    }

    @Test
    void aMissingPartOf120GramsIsFoundWhereItSits() {
        Coordinate found = withPart(120, 400).impliedStation(Axis.X).orElseThrow();
        assertThat(found.mm()).isCloseTo(400, within(1e-9));
        // hypot(840 - 400*3, 1120 - 400*4) / 120 = 600 / 120
        assertThat(found.uncertaintyMm()).isCloseTo(5, within(1e-9));
    }

    @Test
    void aPartTooMuchInTheLedgerIsFoundWhereItIsBooked() {
        assertThat(withPart(-120, 400).impliedStation(Axis.X).orElseThrow().mm())
                .isCloseTo(400, within(1e-9));
    }

    @Test
    void aDifferenceOfExactlyFiveUncertaintiesIsNotPlacedYet() {
        assertThat(withPart(25, 400).impliedStation(Axis.X)).isEmpty();
        assertThat(withPart(25.001, 400).impliedStation(Axis.X)).isPresent();
    }

    @Test
    void nothingIsPlacedAlongAnAxisThatIsNotKnown() {
        assertThat(withPart(120, 400).impliedStation(Axis.Y)).isEmpty();
        assertThat(withPart(120, 400).centre(Axis.Y)).isEmpty();
    }

    @Test
    void aLedgerOfUnknownErrorIsOffAtMostAndPlacesNothing() {
        Comparison known = withPart(120, 400);
        Comparison unknown = new Comparison(known.scales(), known.ledger(), false);
        assertThat(known.mass()).isEqualTo(Significance.MORE_THAN_ADMITTED);
        assertThat(unknown.mass()).isEqualTo(Significance.OFF);
        assertThat(unknown.impliedStation(Axis.X)).isEmpty();
    }

    @Test
    void aShiftOfTheCgCountsThoughTheMassesAreTheSame() {
        Comparison shifted = new Comparison(along(1500, 307_500, new JointError(0, 1500, 0, 0)), LEDGER, true);
        assertThat(shifted.mass()).isEqualTo(Significance.AGREES);
        assertThat(shifted.centre(Axis.X).orElseThrow().differenceMm()).isCloseTo(5, within(1e-9));
        assertThat(shifted.worst()).isEqualTo(Significance.MORE_THAN_ADMITTED);
    }
}
