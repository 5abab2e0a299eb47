package dev.ledgerwing.core.power.solar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellPowerTest {

    private static final CellPower STANDARD = new CellPower(1000, 25);
    private static final CellPower.Curve CURVE =
            new CellPower.Curve(new CellPower.Points(100, 20, 24, 5.4), -0.35, -0.28);

    /** Published worked example: 1000 W/m2, air of 30 degrees, nominal temperature 50 degrees, 67.5 degrees. */
    @Test
    void warmsUpAsPublished() {
        assertThat(CellTemperature.of(30, 1000, 50)).isCloseTo(67.5, within(1e-9));
    }

    /** Published with the tests of the open-source pvlib-python: 900 W/m2, 30 degrees, 100 W, -0.003 per degree, 88.65 W. */
    @Test
    void givesThePublishedPower() {
        assertThat(new CellPower(900, 30).best(100, -0.3)).isCloseTo(88.65, within(1e-9));
    }

    @Test
    void neverTakesPowerIn() {
        assertThat(new CellPower(900, 150).best(100, -5)).isZero();
        assertThat(new CellPower(900, 150).tiedTo(10, new CellPower.Curve(CURVE.points(), -5, 0)))
                .isZero();
    }

    /** By derivation from the two straight lines: 5.4 A x 0 V, the best point itself, half-way down to the open voltage, nothing. */
    @ParameterizedTest
    @CsvSource({"0, 0", "10, 52", "20, 100", "22, 55", "24, 0", "25, 0"})
    void givesWhatThePackVoltageLeaves(double packV, double watts) {
        assertThat(STANDARD.tiedTo(packV, CURVE)).isCloseTo(watts, within(1e-9));
    }

    /** At 65 degrees the best point lies at 17.2 V and 5 A, the open voltage at 21.3 V. */
    @Test
    void losesMoreThanPowerWhereThePackIsAboveTheBestPointOfWarmCells() {
        CellPower warm = new CellPower(1000, 65);

        assertThat(warm.tiedTo(17.2, CURVE)).isCloseTo(86, within(1e-9));
        assertThat(warm.tiedTo(20, CURVE)).isCloseTo(20 * 5 * (21.312 - 20) / (21.312 - 17.2), within(1e-9));
        assertThat(warm.tiedTo(21.4, CURVE)).isZero();
    }

    @Test
    void neverGivesMoreTiedThanAtTheBestPoint() {
        for (double packV = 0.5; packV < 25; packV += 0.5) {
            assertThat(STANDARD.tiedTo(packV, CURVE)).isLessThanOrEqualTo(STANDARD.best(100, -0.35) + 1e-9);
        }
    }
}
