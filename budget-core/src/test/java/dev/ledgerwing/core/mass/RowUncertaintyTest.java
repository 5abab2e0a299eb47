package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.GrowthTable;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.build.WeighedAs;
import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RowUncertaintyTest {

    private static final double TIGHT = 1e-9;

    /** JCGM 100:2008, F.2.2.1: a step d has a standard uncertainty of d/sqrt(12) = 0.28868 d (from memory). */
    @ParameterizedTest
    @CsvSource({"1, 0.28868", "5, 1.44338"})
    void takesTheStepOfAScaleAsARectangle(double stepG, double expectedG) {
        assertThat(grams(Ledgers.scales(stepG, 0, false), weighed(1, null))).isCloseTo(expectedG, within(1e-5));
    }

    /** JCGM 100:2008, 4.3.7: limits +/- a have a standard uncertainty of a/sqrt(3) (from memory). */
    @Test
    void takesTheGreatestErrorOfAScaleAsARectangle() {
        assertThat(grams(Ledgers.scales(0, 2, false), weighed(1, null))).isCloseTo(2 / Math.sqrt(3), within(TIGHT));
    }

    @Test
    void addsStepAndErrorInSquaresAndCountsATareAsASecondReading() {
        double one = Math.sqrt(1.0 / 12 + 1.0 / 3);
        assertThat(grams(Ledgers.scales(1, 1, false), weighed(1, null))).isCloseTo(one, within(TIGHT));
        assertThat(grams(Ledgers.scales(1, 1, true), weighed(1, null))).isCloseTo(one * Math.sqrt(2), within(TIGHT));
    }

    @Test
    void letsPiecesWeighedEachByItselfErrApart() {
        double one = grams(MassUncertainty.OWN_CHOICE, weighed(1, null));
        assertThat(grams(MassUncertainty.OWN_CHOICE, weighed(9, WeighedAs.EACH)))
                .isCloseTo(3 * one, within(TIGHT));
        assertThat(grams(MassUncertainty.OWN_CHOICE, weighed(9, null))).isCloseTo(3 * one, within(TIGHT));
    }

    @Test
    void countsPiecesWeighedTogetherOnce() {
        assertThat(grams(MassUncertainty.OWN_CHOICE, weighed(9, WeighedAs.TOGETHER)))
                .isEqualTo(grams(MassUncertainty.OWN_CHOICE, weighed(1, null)));
    }

    /** By derivation: 4 pieces of 100 g that differ by 2 g, certain scales: 2 sqrt(4 x 3) = 6.928 g. */
    @Test
    void addsTheSpreadBetweenPiecesWhereOnlyOneWasWeighed() {
        assertThat(grams(Ledgers.scales(0, 0, false), weighed(4, WeighedAs.ONE)))
                .isCloseTo(2 * Math.sqrt(12), within(TIGHT));
    }

    @Test
    void multipliesTheErrorOfTheOnePieceThatWasWeighed() {
        double one = grams(MassUncertainty.OWN_CHOICE, weighed(1, WeighedAs.ONE));
        double spread = 2 * Math.sqrt(12);
        assertThat(grams(MassUncertainty.OWN_CHOICE, weighed(4, WeighedAs.ONE)))
                .isCloseTo(Math.hypot(4 * one, spread), within(TIGHT));
    }

    @ParameterizedTest
    @CsvSource({"GUESSED, 100", "CALCULATED, 40", "CATALOGUE, 15"})
    void multipliesAGuessACalculationAndACatalogueFigureByTheQuantity(Basis basis, double expectedG) {
        assertThat(grams(MassUncertainty.OWN_CHOICE, row(5, LineMass.of(Mass.ofGrams(100), basis))))
                .isCloseTo(expectedG, within(TIGHT));
    }

    @Test
    void letsALineOverrideTheRuleForOnePiece() {
        LineMass guessed = new LineMass(Mass.ofGrams(100), Basis.GUESSED, null, Mass.ofGrams(7), null);
        LineMass weighed = new LineMass(Mass.ofGrams(100), Basis.WEIGHED, WeighedAs.EACH, Mass.ofGrams(7), null);
        assertThat(grams(MassUncertainty.OWN_CHOICE, row(4, guessed))).isCloseTo(28, within(TIGHT));
        assertThat(grams(MassUncertainty.OWN_CHOICE, row(4, weighed))).isCloseTo(14, within(TIGHT));
    }

    private static MassRow weighed(int quantity, @Nullable WeighedAs how) {
        return row(quantity, new LineMass(Mass.ofGrams(100), Basis.WEIGHED, how, null, null));
    }

    private static MassRow row(int quantity, LineMass mass) {
        return MassRow.of(Ledgers.line("x", Category.SERVO, quantity, mass), GrowthTable.OWN_CHOICE);
    }

    private static double grams(MassUncertainty rules, MassRow row) {
        return new RowUncertainty(rules).grams(row);
    }
}
