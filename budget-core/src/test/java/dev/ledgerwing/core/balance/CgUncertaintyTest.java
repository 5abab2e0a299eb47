package dev.ledgerwing.core.balance;

import static dev.ledgerwing.core.balance.Balances.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CgUncertaintyTest {

    private static final double STEP_OF_A_POUND_G = 453.59237;

    /** By derivation from JCGM 100:2008, equation 10: three scales at 412, 412 and 52 mm, steps and arms in turn. */
    @ParameterizedTest
    @CsvSource({"1, 0, 0.0183", "5, 0, 0.0916", "0, 0.5, 0.312"})
    void threeScales(double stepG, double armMm, double expectedMm) {
        Build build = Ledgers.with(
                scale("left", 2150, 412, stepG, armMm),
                scale("right", 2140, 412, stepG, armMm),
                scale("nose", 710, 52, stepG, armMm));
        assertThat(Balances.cg(build).xMm()).isCloseTo(360.88, within(0.005));
        assertThat(u(build, MassState.BASIC).xMm()).isCloseTo(expectedMm, within(expectedMm * 0.005));
    }

    /** By derivation: the aeroplane of FAA-H-8083-1B, chapter 3, on scales that step by a pound: 0.00970 and 0.0110 inches. */
    @Test
    void anAeroplaneOnScalesThatStepByAPound() {
        assertThat(u(pounds(1, 0), MassState.BASIC).xMm() / 25.4).isCloseTo(0.00970, within(0.00001));
        assertThat(u(pounds(0, 25.4 / 16 / Math.sqrt(12)), MassState.BASIC).xMm() / 25.4)
                .isCloseTo(0.0110, within(0.0005));
    }

    private static Build pounds(double steps, double armMm) {
        double step = steps * STEP_OF_A_POUND_G;
        return Ledgers.with(
                scale("right", 830 * STEP_OF_A_POUND_G, 46 * 25.4, step, armMm),
                scale("left", 836 * STEP_OF_A_POUND_G, 46 * 25.4, step, armMm),
                scale("nose", 340 * STEP_OF_A_POUND_G, -32 * 25.4, step, armMm));
    }

    /** What a scale reads is certain to step / sqrt(12), rounded to the milligram. */
    private static PartLine scale(String id, double grams, double xMm, double stepG, double armMm) {
        Mass uncertainty = Mass.ofGrams(stepG / Math.sqrt(12));
        LineMass mass = new LineMass(Mass.ofGrams(grams), Basis.WEIGHED, null, uncertainty, null);
        return Ledgers.line(id, Category.STRUCTURE, 1, mass)
                .withPlace(new LinePlace(at(xMm, 0, 0), Length.ofMm(armMm), null, null, null, null));
    }

    /**
     * By derivation: two guesses of 100 g +-20 g at 0 and 200 mm, sensitivities -0.5 and +0.5 mm/g. Off together they cancel: u^2 = (1 - r)
     * (10^2 + 10^2) + r (10 - 10)^2.
     */
    @ParameterizedTest
    @CsvSource({"0, 14.142136", "0.3, 11.832160", "1, 0"})
    void whatIsOffTogetherOnBothSidesCancels(double correlation, double expectedMm) {
        Build build = Ledgers.judgedWith(
                Ledgers.guessesCorrelatedBy(correlation), Ledgers.with(guess("front", 0), guess("back", 200)));
        assertThat(u(build, MassState.BASIC).xMm()).isCloseTo(expectedMm, within(1e-6));
    }

    private static PartLine guess(String id, double xMm) {
        return Ledgers.line(id, Category.STRUCTURE, 100, Basis.GUESSED)
                .withPlace(new LinePlace(at(xMm, 0, 0), Length.ZERO, null, null, null, null));
    }

    @Test
    void aStationWithoutAnUncertaintyHasThatOfTheRecordOrTheDefault() {
        PartLine part = Ledgers.certain("a", 100).withPlace(LinePlace.at(at(10, 0, 0)));
        assertThat(u(Ledgers.with(part), MassState.BASIC)).isEqualTo(new CgUncertainty(3, 3, 3));
        PartLine measured = Balances.certain("b", 300, 10);
        assertThat(u(Ledgers.with(part, measured), MassState.BASIC).zMm()).isEqualTo(0.75);
    }

    /** By derivation: 100 g of 1100 g anywhere between 0 and 400 mm: 100 / 1100 x 400 / sqrt(12). */
    @Test
    void aBookingThatMaySitAnywhereMakesTheCgLessSure() {
        Build build = Ledgers.with(Balances.certain("a", 500, 0), Balances.certain("b", 500, 400))
                .withBooking(new Booking(Mass.ofGrams(100), "kitchen scales"));
        assertThat(u(build, MassState.BASIC).xMm()).isZero();
        assertThat(u(build, MassState.PREDICTED).xMm()).isCloseTo(400 / 11.0 / Math.sqrt(12), within(1e-9));
    }

    private static CgUncertainty u(Build build, MassState state) {
        return BalanceStatement.of(build).design().uncertainty(state).orElseThrow();
    }
}
