package dev.ledgerwing.core.power.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.Pack.Chemistry;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackFiguresTest {

    /** Volts of lithium polymer packs as several sellers print them. */
    @ParameterizedTest
    @CsvSource({"2, 8.4, 7.4, 6.0", "3, 12.6, 11.1, 9.0", "4, 16.8, 14.8, 12.0", "6, 25.2, 22.2, 18.0"})
    void hasThePublishedVoltsOfLithiumPolymer(int series, double fullV, double nominalV, double emptyV) {
        PackFigures pack = PackFigures.of(cells(Chemistry.LITHIUM_POLYMER, series, 1, 5000.0));
        assertThat(pack.fullV()).isCloseTo(fullV, within(1e-9));
        assertThat(pack.nominalV()).isCloseTo(nominalV, within(1e-9));
        assertThat(pack.emptyV()).isCloseTo(emptyV, within(1e-9));
    }

    /** One cell of each kind as makers print it; the fourth and the fifth row, and 4.35 V, from memory. */
    @ParameterizedTest
    @CsvSource({
        "LITHIUM_POLYMER, 4.2, 3.7, 3.0",
        "LITHIUM_ION, 4.2, 3.6, 2.5",
        "LITHIUM_POLYMER_HIGH_VOLTAGE, 4.35, 3.8, 3.0",
        "LITHIUM_IRON_PHOSPHATE, 3.65, 3.2, 2.5",
        "NICKEL_METAL_HYDRIDE, 1.45, 1.2, 1.0"
    })
    void hasThePublishedVoltsOfEachChemistry(Chemistry chemistry, double fullV, double nominalV, double emptyV) {
        PackFigures cell = PackFigures.of(cells(chemistry, 1, 1, null));
        assertThat(cell.fullV()).isEqualTo(fullV);
        assertThat(cell.nominalV()).isEqualTo(nominalV);
        assertThat(cell.emptyV()).isEqualTo(emptyV);
    }

    @Test
    void goesByTheVoltsOfItsOwnCells() {
        Pack pack = new Pack(Chemistry.LITHIUM_ION, 4, 1, null, null, null, null, null, null, 4.1, null, 2.8, false);
        assertThat(PackFigures.of(pack).fullV()).isCloseTo(16.4, within(1e-9));
        assertThat(PackFigures.of(pack).nominalV()).isCloseTo(14.4, within(1e-9));
        assertThat(PackFigures.of(pack).emptyV()).isCloseTo(11.2, within(1e-9));
    }

    @Test
    void takesTheVoltsOfAnotherChemistryFromTheRecord() {
        Pack pack = new Pack(Chemistry.OTHER, 10, 1, null, null, null, null, null, null, 2.8, 2.4, 1.8, false);
        assertThat(PackFigures.of(pack).fullV()).isEqualTo(28);
        assertThat(PackFigures.of(pack).nominalV()).isEqualTo(24);
        assertThat(PackFigures.of(pack).emptyV()).isEqualTo(18);
    }

    /** Published: 50 C of 4 Ah is 200 A, 25 C of 5 Ah is 125 A. */
    @ParameterizedTest
    @CsvSource({"4000, 50, 200", "5000, 25, 125"})
    void givesThePublishedCurrents(double capacityMah, double rateC, double ampere) {
        Pack pack = new Pack(
                Chemistry.LITHIUM_POLYMER,
                3,
                1,
                capacityMah,
                rateC,
                rateC * 2,
                null,
                null,
                rateC / 25,
                null,
                null,
                null,
                true);
        assertThat(PackFigures.of(pack).continuousA()).isCloseTo(ampere, within(1e-9));
        assertThat(PackFigures.of(pack).burstA()).isCloseTo(2 * ampere, within(1e-9));
        assertThat(PackFigures.of(pack).maxChargeA()).isCloseTo(ampere / 25, within(1e-9));
    }

    /** Published: E = V C and C = m c; by derivation 4S3P of 3500 mAh hold 10.5 Ah at 14.4 V, of which 80 % may be used. */
    @Test
    void countsCellsSideBySide() {
        Pack pack = new Pack(Chemistry.LITHIUM_ION, 4, 3, 3500.0, 2.0, 3.0, 30.0, 80.0, 0.5, null, null, null, true);
        PackFigures figures = PackFigures.of(pack);
        assertThat(figures.capacityMah()).isCloseTo(10_500, within(1e-9));
        assertThat(figures.energyWh()).isCloseTo(151.2, within(1e-9));
        assertThat(figures.usableMah()).isCloseTo(8400, within(1e-9));
        assertThat(figures.usableWh()).isCloseTo(120.96, within(1e-9));
        assertThat(figures.resistanceOhm()).isCloseTo(0.040, within(1e-12));
        assertThat(figures.continuousA()).isCloseTo(21, within(1e-9));
        assertThat(figures.burstA()).isCloseTo(31.5, within(1e-9));
        assertThat(figures.maxChargeA()).isCloseTo(5.25, within(1e-9));
    }

    @Test
    void knowsNothingThatItsInputsDoNotSay() {
        PackFigures figures = PackFigures.of(
                new Pack(Chemistry.LITHIUM_ION, 4, 3, null, 2.0, 3.0, null, 80.0, 0.5, null, null, null, true));
        assertThat(figures.capacityMah()).isNull();
        assertThat(figures.energyWh()).isNull();
        assertThat(figures.usableMah()).isNull();
        assertThat(figures.usableWh()).isNull();
        assertThat(figures.resistanceOhm()).isNull();
        assertThat(figures.continuousA()).isNull();
        assertThat(figures.burstA()).isNull();
        assertThat(figures.maxChargeA()).isNull();
    }

    @Test
    void knowsNoCurrentWithoutItsRateAndNoUseWithoutItsShare() {
        PackFigures figures = PackFigures.of(cells(Chemistry.LITHIUM_ION, 4, 1, 3500.0));
        assertThat(figures.capacityMah()).isEqualTo(3500);
        assertThat(figures.continuousA()).isNull();
        assertThat(figures.burstA()).isNull();
        assertThat(figures.maxChargeA()).isNull();
        assertThat(figures.usableMah()).isNull();
    }

    private static Pack cells(Chemistry chemistry, int series, int parallel, @Nullable Double cellCapacityMah) {
        return new Pack(
                chemistry, series, parallel, cellCapacityMah, null, null, null, null, null, null, null, null, false);
    }
}
