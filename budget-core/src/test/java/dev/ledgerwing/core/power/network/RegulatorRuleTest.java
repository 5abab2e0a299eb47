package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.pack;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.rail;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Behind packs of two cells: 8.4 V full, 6 V empty. */
class RegulatorRuleTest {

    private static Build with(Regulator regulator) {
        return build(
                List.of(pack("p", 2, 0)),
                List.of(rail("main", 5)),
                List.of(feed("p", "main", FeedElement.regulator("Regulator", 1000.0, 1000.0, regulator))),
                part("L", constantCurrent("main", 1, 1)));
    }

    private static Regulator linear(@Nullable Double dropoutV, @Nullable Double minInputV, @Nullable Double maxInputV) {
        return new Regulator(Regulator.Type.LINEAR, 5, null, dropoutV, minInputV, maxInputV, 0.0);
    }

    private static Regulator switching(double outputV, @Nullable Double dropoutV, @Nullable Double minInputV) {
        return new Regulator(Regulator.Type.SWITCHING, outputV, 90.0, dropoutV, minInputV, 20.0, 0.0);
    }

    private static double lowestV(Build build) {
        Double lowestV =
                NetworkStatement.of(PowerNetwork.of(build)).rails().get(0).lowestV();
        return lowestV == null ? Double.NaN : lowestV;
    }

    @Test
    void oneThatGetsWhatItNeedsIsNotSpokenOf() {
        Found.none(RegulatorRule.INPUT, with(linear(1.0, 5.5, 12.0)));
    }

    @Test
    void oneBelowItsDropoutBreaksAndItsOutputFollows() {
        Build build = with(linear(1.2, 5.5, 12.0));
        assertThat(Found.said(RegulatorRule.INPUT, Verdict.BREAKS, build))
                .isEqualTo("“Regulator”’s input falls to 6 V; it needs 6.2 V to give 5 V: below that its output follows"
                        + " the input down.");
        assertThat(lowestV(build)).isEqualTo(4.8);
    }

    @Test
    void oneBelowItsLeastInputBreaksAndWhatHangsOnItIsDark() {
        Build build = with(linear(0.5, 6.5, 12.0));
        assertThat(Found.said(RegulatorRule.INPUT, Verdict.BREAKS, build)).contains("6.5 V", "needs to work at all");
        PowerNetwork network = PowerNetwork.of(build);
        NetworkCase situation = network.on(network.occasions().get(0));
        assertThat(situation.normal(Charge.EMPTY, LoadLevel.PEAK).loads().get(0).isDark())
                .isTrue();
        assertThat(situation.normal(Charge.FULL, LoadLevel.PEAK).loads().get(0).isDark())
                .isFalse();
    }

    @Test
    void oneThatIsGivenMoreThanItBearsBreaks() {
        assertThat(Found.said(RegulatorRule.INPUT, Verdict.BREAKS, with(linear(0.5, 5.5, 8.0))))
                .isEqualTo("“Regulator” bears no more than 8 V; full packs give it 8.4 V.");
    }

    @Test
    void oneOfUnknownInputRangeIsNotKnown() {
        assertThat(Found.of(RegulatorRule.INPUT, with(linear(null, null, null))))
                .hasSize(2)
                .allSatisfy(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN));
    }

    @Test
    void aSwitchingOneAboveItsInputRaisesItAndIsJudgedByItsLeastInputAlone() {
        Build raising = with(switching(12, null, 5.0));
        Found.none(RegulatorRule.INPUT, raising);
        assertThat(lowestV(raising)).isEqualTo(12);
        assertThat(Found.said(RegulatorRule.INPUT, Verdict.BREAKS, with(switching(12, null, 6.5))))
                .contains("6.5 V");
    }

    @Test
    void aSwitchingOneWithinItsInputRaisesOnlyWhenItSaysThatItWorksFromLess() {
        assertThat(lowestV(with(switching(7, null, 4.0)))).isEqualTo(7);
        Build lowering = with(switching(7, null, null));
        assertThat(lowestV(lowering)).isEqualTo(6);
        assertThat(Found.of(RegulatorRule.INPUT, lowering))
                .anySatisfy(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.BREAKS));
    }

    @Test
    void aSwitchingOneWithADropoutNeverRaises() {
        Build build = with(switching(12, 0.5, 4.0));
        assertThat(Found.said(RegulatorRule.INPUT, Verdict.BREAKS, build)).contains("it needs 12.5 V to give 12 V");
        assertThat(lowestV(build)).isEqualTo(5.5);
    }

    /** “From 4 V on” cannot be where a linear one holds 5 V; with a least input above its output the maker has counted the dropout. */
    @Test
    void aLinearOneWithoutADropoutThatWorksFromLessThanItGivesIsNotKnown() {
        assertThat(Found.said(RegulatorRule.INPUT, Verdict.UNKNOWN, with(linear(null, 4.0, 12.0))))
                .isEqualTo(
                        "“Regulator” has no dropout yet, nor a least input voltage above its output; its input falls to"
                                + " 6 V.");
        Found.none(RegulatorRule.INPUT, with(linear(null, 5.5, 12.0)));
    }
}
