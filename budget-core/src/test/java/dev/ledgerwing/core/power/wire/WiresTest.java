package dev.ledgerwing.core.power.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.build.WireRun.Routing;
import dev.ledgerwing.core.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WiresTest {

    private static final double M_PER_FT = 0.3048;

    /**
     * FAA AC 43.13-1B Tables 11-7 and 11-8, with the printed resistance of stranded, tin-plated wire in ohms for each foot; the printed run
     * counts the way back. Two rows are misprinted and left out: .00126 x 19.5 x 20 is 0.491 and not .366, .00202 x 88 x 20 is 3.56 and
     * not 3.60.
     */
    @ParameterizedTest
    @CsvSource({"0.00044, 107, 20, 0.942", "0.00028,  90, 20, 0.504", "0.00126,  39, 20, 0.98", "0.00126, 273, 20, 6.88"
    })
    void losesThePublishedVoltsOutAndBack(double ohmPerFt, double runFt, double currentA, double lostV) {
        double ohm = Wires.loopOhm(ohmPerFt / M_PER_FT, runFt / 2 * M_PER_FT);
        assertThat(ohm * currentA).isCloseTo(lostV, within(0.003));
    }

    /** FAA AC 43.13-1B, Example No. 1: 50 ft with the way back, 20 A, at most 1 V of 28 V: No. 10 loses too much, No. 8 does not. */
    @ParameterizedTest
    @CsvSource({"0.00126, 1.26", "0.00070, 0.70"})
    void choosesTheWireOfThePublishedExample(double ohmPerFt, double lostV) {
        assertThat(Wires.loopOhm(ohmPerFt / M_PER_FT, 25 * M_PER_FT) * 20).isCloseTo(lostV, within(0.0005));
    }

    /** The same example with bare solid wire at the temperature that voltages are reckoned at: it comes to the same choice. */
    @Test
    void choosesTheSameWireByItsOwnResistance() {
        assertThat(20 * Wires.loopOhm(run(10, 25 * M_PER_FT * 1000, 2), 40)).isGreaterThan(1);
        assertThat(20 * Wires.loopOhm(run(8, 25 * M_PER_FT * 1000, 2), 40)).isLessThan(1);
    }

    /** FAA AC 43.13-1B, Example No. 2, last step (its answer, 9.5 ft, from memory): 15.5 ft that may be used cold shrink at 182 °C. */
    @Test
    void allowsOnlyAShorterRunWhenItIsHot() {
        double coldOhm = Wires.loopOhm(run(14, 1000, 2), 20);
        double hotOhm = Wires.loopOhm(run(14, 1000, 2), 182);
        assertThat(15.5 * coldOhm / hotOhm).isCloseTo(9.47, within(0.01));
    }

    @Test
    void loseNoMoreForWiresThatCarryNoCurrent() {
        assertThat(Wires.loopOhm(run(22, 300, 3), 20)).isEqualTo(Wires.loopOhm(run(22, 300, 2), 20));
    }

    /** By derivation: 2 m of three conductors of 0.3255 mm2 hold 17.50 g of copper. */
    @Test
    void weighEveryConductorWithItsInsulation() {
        assertThat(Wires.mass(run(22, 2000, 3)).grams())
                .isCloseTo(Wires.INSULATION_FACTOR * 2 * 3 * 0.3255 * 8.96, within(0.01));
    }

    private static WireRun run(int awg, double lengthMm, int conductors) {
        return new WireRun(awg, Length.ofMm(lengthMm), conductors, Routing.BUNDLE, 105.0);
    }
}
