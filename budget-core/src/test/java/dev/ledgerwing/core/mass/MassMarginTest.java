package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MassMarginTest {

    private static final double TO_TWO_PLACES = 0.005;

    /**
     * Terms of ANSI/AIAA S-120A-2015 with SAWE RP A-3 (definitions from memory): basic 4.0 kg, allowance 15 per cent, allowable
     * 5.0 kg. The three percentages are by derivation: the documents differ in what the margin is a per cent of.
     */
    @ParameterizedTest
    @CsvSource({"BASIC, 10.00", "PREDICTED, 8.70", "TARGET, 8.00"})
    void namesItsDenominator(MarginOf denominator, double percent) {
        Build build = Ledgers.withTarget(
                5000, null, Ledgers.with(Ledgers.line("L1", Category.STRUCTURE, 1, Ledgers.grownBy(15, 4000))));
        MassStatement statement = MassStatement.of(build);
        assertThat(statement.growth()).isEqualTo(Mass.ofGrams(600));
        assertThat(statement.predicted()).isEqualTo(Mass.ofGrams(4600));
        MassMargin margin = statement.margin().orElseThrow();
        assertThat(margin.mass()).isEqualTo(Mass.ofGrams(400));
        assertThat(margin.percent(denominator)).isCloseTo(percent, within(TO_TWO_PLACES));
    }

    /**
     * ESA margin philosophy SRE-PA/2011.097 with equipment allowances of ECSS-E-ST-10-02C (second-hand): 5, 10 and 20 per cent at
     * equipment level, then 20 per cent of the sum at system level. By derivation: 4.000 kg, then 4.800 kg.
     */
    @Test
    void expressesAnAllowanceByPartAndAnotherOnTheWhole() {
        Build parts = Ledgers.with(
                Ledgers.line("shelf", Category.AVIONICS, 1, Ledgers.grownBy(5, 1000)),
                Ledgers.line("changed", Category.AVIONICS, 1, Ledgers.grownBy(10, 500)),
                Ledgers.line("new", Category.STRUCTURE, 1, Ledgers.grownBy(20, 2000)));
        MassStatement statement = MassStatement.of(Ledgers.withTarget(4800, null, parts));
        assertThat(statement.predicted()).isEqualTo(Mass.ofGrams(4000));
        assertThat(statement.margin().orElseThrow().percent(MarginOf.PREDICTED)).isEqualTo(20.0);
    }

    @Test
    void isNegativeWhenTheTargetIsBroken() {
        MassMargin margin = new MassMargin(Mass.ofGrams(6800), Mass.ofGrams(6500), Mass.ofGrams(6912), 5);
        assertThat(margin.mass()).isEqualTo(Mass.ofGrams(-112));
        assertThat(margin.isBroken()).isTrue();
        assertThat(margin.isShort()).isTrue();
    }

    @Test
    void isEnoughWhenEqualToTheReserve() {
        MassMargin exact = new MassMargin(Mass.ofGrams(6000), Mass.ofGrams(5700), Mass.ofGrams(5700), 5);
        MassMargin less = new MassMargin(Mass.ofGrams(6000), Mass.ofGrams(5700), Mass.ofGrams(5700.001), 5);
        assertThat(exact.reserve()).isEqualTo(Mass.ofGrams(300));
        assertThat(exact.isShort()).isFalse();
        assertThat(less.isShort()).isTrue();
    }

    @Test
    void isNoPercentageOfNothing() {
        MassMargin margin = new MassMargin(Mass.ofGrams(6000), Mass.ZERO, Mass.ZERO, 5);
        assertThat(margin.percent(MarginOf.BASIC)).isNull();
        assertThat(margin.percent(MarginOf.PREDICTED)).isNull();
        assertThat(margin.percent(MarginOf.TARGET)).isEqualTo(100.0);
    }
}
