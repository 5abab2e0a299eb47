package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.MassUnit;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CeilingRuleTest {

    /**
     * (EU) 2019/945, parts 1 to 4 of the annex: below 250 g, 900 g, 4 kg and 25 kg (all second-hand); 14 CFR 107.3: below 55 lb
     * (second-hand). Strict: the limit itself is over it.
     */
    @ParameterizedTest
    @CsvSource({"250, G", "900, G", "4, KG", "25, KG", "55, LB"})
    void breaksAStrictCeilingAtExactlyTheLimit(double limit, MassUnit unit) {
        Mass ceiling = Mass.ofGrams(limit * unit.inGrams());
        assertThat(verdict(ceiling.minus(new Mass(1)), ceiling, CeilingIs.BELOW))
                .isEqualTo(Verdict.HOLDS);
        assertThat(verdict(ceiling, ceiling, CeilingIs.BELOW)).isEqualTo(Verdict.BREAKS);
        assertThat(verdict(ceiling.plus(new Mass(1)), ceiling, CeilingIs.BELOW)).isEqualTo(Verdict.BREAKS);
    }

    /** 14 CFR 107.110: 0.55 pounds or less (read verbatim). */
    @Test
    void holdsAnInclusiveCeilingAtExactlyTheLimit() {
        Mass ceiling = Mass.ofGrams(0.55 * MassUnit.LB.inGrams());
        assertThat(verdict(ceiling, ceiling, CeilingIs.AT_MOST)).isEqualTo(Verdict.HOLDS);
        assertThat(verdict(ceiling.plus(new Mass(1)), ceiling, CeilingIs.AT_MOST))
                .isEqualTo(Verdict.BREAKS);
    }

    /** By derivation: 250 g is above 0.55 lb by 0.524 g. */
    @Test
    void tellsTwoHundredAndFiftyGramsFromElevenTwentiethsOfAPound() {
        Mass ceiling = Mass.ofGrams(0.55 * MassUnit.LB.inGrams());
        Finding finding =
                finding(Ledgers.withCeiling(ceiling, CeilingIs.AT_MOST, Ledgers.with(Ledgers.certain("all", 250))));
        assertThat(finding.verdict()).isEqualTo(Verdict.BREAKS);
        assertThat(finding.marginLeft()).isCloseTo(-0.524, within(0.0005));
    }

    @Test
    void judgesTheHeaviestFlightCaseAtPredictedMass() {
        Build build = Ledgers.withCases(
                Ledgers.with(Ledgers.line("a", Category.STRUCTURE, 1, Ledgers.grownBy(10, 1000))),
                Ledgers.loadCase("full", Purpose.FLIGHT, List.of(), Ledgers.extra("Bottles", 300.0, Basis.WEIGHED)),
                Ledgers.loadCase("stand", Purpose.GROUND, List.of(), Ledgers.extra("Rig", 5000.0, Basis.WEIGHED)));
        Finding finding = finding(Ledgers.withCeiling(Mass.ofGrams(1350), CeilingIs.BELOW, build));
        assertThat(finding.measured()).isEqualTo(1400.0);
        assertThat(Said.sentence(finding))
                .isEqualTo(
                        "Heaviest in flight is “Case full”, predicted 1400 g: breaks the ceiling (below 1350 g) by 50 g.");
    }

    @Test
    void saysThatAStrictCeilingMustNotBeReached() {
        Finding finding = finding(
                Ledgers.withCeiling(Mass.ofGrams(250), CeilingIs.BELOW, Ledgers.with(Ledgers.certain("all", 250))));
        assertThat(Said.sentence(finding))
                .isEqualTo(
                        "Heaviest in flight is “All up”, predicted 250 g: equal to the ceiling, which must not be reached"
                                + " (below 250 g).");
    }

    @Test
    void offersToLightenByAMilligramMoreThanAStrictCeiling() {
        Finding finding = finding(
                Ledgers.withCeiling(Mass.ofGrams(250), CeilingIs.BELOW, Ledgers.with(Ledgers.certain("all", 250))));
        assertThat(Said.remedies(finding)).extracting(remedy -> remedy.cost()).containsExactly(new Mass(-1));
    }

    @Test
    void isTightWithinTwiceTheUncertaintyOfThatCase() {
        Build build = Ledgers.with(Ledgers.line("a", Category.STRUCTURE, 500, Basis.GUESSED));
        Finding within = finding(Ledgers.withCeiling(Mass.ofGrams(799.999), CeilingIs.BELOW, build));
        Finding clear = finding(Ledgers.withCeiling(Mass.ofGrams(800.001), CeilingIs.BELOW, build));
        assertThat(within.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(within.remedies()).isNotEmpty();
        assertThat(clear.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void isNotKnownWhileAnythingInAFlightCaseHasNoMass() {
        Build build = Ledgers.withCases(
                Ledgers.with(Ledgers.certain("a", 1000)),
                Ledgers.loadCase("other", Purpose.FLIGHT, List.of(), Ledgers.extra("Box", null, Basis.GUESSED)));
        assertThat(finding(Ledgers.withCeiling(Mass.ofGrams(25_000), CeilingIs.BELOW, build))
                        .verdict())
                .isEqualTo(Verdict.UNKNOWN);
        assertThat(finding(Ledgers.withCeiling(Mass.ofGrams(900), CeilingIs.BELOW, build))
                        .verdict())
                .isEqualTo(Verdict.BREAKS);
    }

    @Test
    void doesNotAskForMassesThatAreOnTheGroundOnly() {
        Build build = Ledgers.withCases(
                Ledgers.with(Ledgers.certain("a", 1000)),
                Ledgers.loadCase("stand", Purpose.GROUND, List.of(), Ledgers.extra("Rig", null, Basis.GUESSED)));
        assertThat(finding(Ledgers.withCeiling(Mass.ofGrams(25_000), CeilingIs.BELOW, build))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void isNotKnownWithNothingAboard() {
        assertThat(finding(Ledgers.withCeiling(Mass.ofGrams(250), CeilingIs.BELOW, Ledgers.with()))
                        .verdict())
                .isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void saysNothingWithoutACeiling() {
        MassStatement statement = MassStatement.of(Ledgers.with(Ledgers.certain("a", 1000)));
        assertThat(new CeilingRule(statement, Figures.METRIC).finding()).isEmpty();
    }

    private static Verdict verdict(Mass mass, Mass ceiling, CeilingIs meant) {
        LineMass exactly = new LineMass(mass, Basis.WEIGHED, null, Mass.ZERO, null);
        Build build = Ledgers.with(Ledgers.line("all", Category.STRUCTURE, 1, exactly));
        return finding(Ledgers.withCeiling(ceiling, meant, build)).verdict();
    }

    private static Finding finding(Build build) {
        return new CeilingRule(MassStatement.of(build), Figures.METRIC)
                .finding()
                .orElseThrow();
    }
}
