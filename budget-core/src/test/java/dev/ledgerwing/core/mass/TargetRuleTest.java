package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TargetRuleTest {

    @Test
    void breaksAboveTheTargetAndSaysByHowMuch() {
        Finding finding = finding(Ledgers.withTarget(6800, null, Ledgers.with(Ledgers.certain("a", 6912))));
        assertThat(finding.verdict()).isEqualTo(Verdict.BREAKS);
        assertThat(Said.sentence(finding)).isEqualTo("Predicted 6912 g breaks the target of 6800 g by 112 g.");
        assertThat(finding.measured()).isEqualTo(6912.0);
        assertThat(finding.limit()).isEqualTo(6800.0);
        assertThat(finding.marginLeft()).isEqualTo(-112.0);
        assertThat(finding.unit()).isEqualTo("g");
    }

    @ParameterizedTest
    @CsvSource({"6800.001, BREAKS", "6800, TIGHT", "6460.001, TIGHT", "6460, HOLDS", "100, HOLDS"})
    void isTightShortOfTheReserveOfTheStage(double massG, Verdict expected) {
        Build build = Ledgers.withTarget(6800, null, Ledgers.with(Ledgers.certain("a", massG)));
        assertThat(finding(Ledgers.atStage(Stage.BUILD, build)).verdict()).isEqualTo(expected);
    }

    @Test
    void holdsAtExactlyTheTargetWhereNoReserveIsWantedAndNothingIsUncertain() {
        Build build = Ledgers.withTarget(6800, 0.0, Ledgers.with(Ledgers.certain("a", 6800)));
        assertThat(finding(build).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void saysWhichReserveIsShort() {
        Build build = Ledgers.withTarget(6800, 5.0, Ledgers.with(Ledgers.certain("a", 6600)));
        assertThat(Said.sentence(finding(build)))
                .isEqualTo(
                        "Predicted 6600 g leaves 200 g to the target of 6800 g, short of the wanted reserve of 340 g (5 % of target).");
    }

    /** Predicted 600 g, standard uncertainty 100 g. */
    @ParameterizedTest
    @CsvSource({"799.999, TIGHT", "800.001, HOLDS"})
    void isTightInsideByLessThanTwiceItsUncertainty(double targetG, Verdict expected) {
        Build build = Ledgers.with(Ledgers.line("a", Category.STRUCTURE, 500, Basis.GUESSED));
        assertThat(finding(Ledgers.withTarget(targetG, 0.0, build)).verdict()).isEqualTo(expected);
    }

    @Test
    void offersToWeighWhereTheUncertaintyIsTheMatter() {
        Build build = Ledgers.withTarget(
                750, 0.0, Ledgers.with(Ledgers.line("tray", Category.STRUCTURE, 500, Basis.GUESSED)));
        Finding finding = finding(build);
        assertThat(Said.sentence(finding))
                .isEqualTo(
                        "Predicted 600 g leaves 150 g to the target of 750 g, less than twice its standard uncertainty of"
                                + " 100 g.");
        assertThat(Said.remedies(finding))
                .containsExactly(new Remedy(
                        "Weigh “Part tray” instead of guessing it: the band shrinks from ±196 g to ±1.79 g.",
                        null,
                        "tray"));
    }

    @Test
    void isNotKnownWithoutATarget() {
        Finding finding = finding(Ledgers.with(Ledgers.certain("a", 1000)));
        assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(finding.measured()).isEqualTo(1000.0);
        assertThat(finding.limit()).isNull();
        assertThat(finding.marginLeft()).isNull();
    }

    @Test
    void isNotKnownWithNothingAboard() {
        assertThat(finding(Ledgers.withTarget(6800, null, Ledgers.with())).verdict())
                .isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void isNotKnownWhileAPartAboardHasNoMass() {
        Build build =
                Ledgers.with(Ledgers.certain("a", 1000), Ledgers.line("b", Category.RADIO, 1, LineMass.notKnown()));
        Finding finding = finding(Ledgers.withTarget(6800, null, build));
        assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(Said.sentence(finding))
                .isEqualTo(
                        "Predicted 1000 g leaves 5800 g to the target of 6800 g. One part without a mass comes on top.");
    }

    @Test
    void breaksEvenThoughAPartHasNoMass() {
        Build build =
                Ledgers.with(Ledgers.certain("a", 7000), Ledgers.line("b", Category.RADIO, 1, LineMass.notKnown()));
        Finding finding = finding(Ledgers.withTarget(6800, null, build));
        assertThat(finding.verdict()).isEqualTo(Verdict.BREAKS);
        assertThat(Said.sentence(finding)).endsWith("by 200 g. One part without a mass comes on top.");
    }

    @Test
    void neverSaysThatALimitIsBrokenByNothing() {
        Finding finding = finding(Ledgers.withTarget(6800, null, Ledgers.with(Ledgers.certain("a", 6800.004))));
        assertThat(Said.sentence(finding)).endsWith("by 0.004 g.");
    }

    @Test
    void offersWhatSavesTheExcess() {
        Build build = Ledgers.withTarget(
                2000,
                null,
                Ledgers.with(
                        Ledgers.line("wing", Category.STRUCTURE, 1500, Basis.GUESSED),
                        Ledgers.line("camera", Category.PAYLOAD, 400, Basis.WEIGHED),
                        Ledgers.line("lead", Category.BALLAST, 150, Basis.WEIGHED)));
        assertThat(Said.remedies(finding(build)))
                .containsExactly(
                        new Remedy(
                                "Weigh “Part wing” instead of guessing it: its growth allowance of 300 g falls away if it weighs"
                                        + " what the ledger says.",
                                Mass.ofGrams(-300),
                                "wing"),
                        new Remedy("Leave “Part camera” at home: saves 400 g.", Mass.ofGrams(-400), "camera"));
    }

    @Test
    void offersToLightenWhatCanBearIt() {
        Build build = Ledgers.withTarget(
                6800, 0.0, Ledgers.with(Ledgers.certain("pack", 1500), Ledgers.certain("rest", 5412)));
        assertThat(Said.remedies(finding(build)))
                .containsExactly(
                        new Remedy(
                                "Make or find “Part rest” 112 g lighter, 2.1 % of its 5412 g.",
                                Mass.ofGrams(-112), "rest"),
                        new Remedy(
                                "Make or find “Part pack” 112 g lighter, 7.5 % of its 1500 g.",
                                Mass.ofGrams(-112), "pack"));
    }

    @Test
    void offersNothingWhereNothingIsAmiss() {
        assertThat(finding(Ledgers.withTarget(6800, null, Ledgers.with(Ledgers.certain("a", 100))))
                        .remedies())
                .isEmpty();
    }

    @Test
    void speaksOuncesToWhoeverReadsOunces() {
        MassForecast forecast =
                MassForecast.of(Ledgers.withTarget(1000, null, Ledgers.with(Ledgers.certain("a", 1100))));
        Finding finding = new TargetRule(forecast.statement(), forecast, new Figures(UnitSystem.OUNCE_INCH)).finding();
        assertThat(Said.sentence(finding)).isEqualTo("Predicted 38.8 oz breaks the target of 35.27 oz by 3.53 oz.");
        assertThat(finding.measured()).isEqualTo(1100.0);
    }

    private static Finding finding(Build build) {
        MassForecast forecast = MassForecast.of(build);
        return new TargetRule(forecast.statement(), forecast, Figures.METRIC).finding();
    }
}
