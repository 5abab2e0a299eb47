package dev.ledgerwing.core.review;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BuildReviewTest {

    private static final PartLine WING = Ledgers.line("wing", Category.STRUCTURE, 500, Basis.GUESSED);
    private static final PartLine PACK = Ledgers.certain("pack", 1500);
    private static final PartLine TRAY = Ledgers.line("tray", Category.STRUCTURE, 1, LineMass.notKnown());

    /** By derivation from 1500 g certain and 500 g guessed at 20 per cent, which grows by 20 per cent. */
    @Test
    void givesEveryFigureByNameInAFixedOrder() {
        Build build = Ledgers.withBooking(-20, Ledgers.with(WING, PACK))
                .withBudget(new MassBudget(Mass.ofGrams(2600), Mass.ofGrams(25_000), CeilingIs.BELOW, null));
        Map<String, Double> figures = BuildReview.of(build).figures();
        assertThat(figures.keySet())
                .containsExactly(
                        "mass.basicG",
                        "mass.growthG",
                        "mass.bookingG",
                        "mass.predictedG",
                        "mass.weighedPercent",
                        "mass.lines",
                        "mass.unknownLines",
                        "mass.reservePercent",
                        "mass.targetG",
                        "mass.marginG",
                        "mass.marginPercentOfBasic",
                        "mass.marginPercentOfPredicted",
                        "mass.marginPercentOfTarget",
                        "mass.ceilingG",
                        "mass.heaviestCaseG",
                        "mass.standardUncertaintyG",
                        "mass.band95LowG",
                        "mass.band95HighG",
                        "mass.probabilityWithinTarget",
                        "balance.unplacedParts",
                        "balance.all-up.unplacedParts");
        assertThat(figures)
                .containsEntry("mass.basicG", 2000.0)
                .containsEntry("mass.growthG", 100.0)
                .containsEntry("mass.bookingG", -20.0)
                .containsEntry("mass.predictedG", 2080.0)
                .containsEntry("mass.weighedPercent", 75.0)
                .containsEntry("mass.lines", 2.0)
                .containsEntry("mass.unknownLines", 0.0)
                .containsEntry("mass.reservePercent", 10.0)
                .containsEntry("mass.marginG", 520.0)
                .containsEntry("mass.marginPercentOfBasic", 26.0)
                .containsEntry("mass.marginPercentOfPredicted", 25.0)
                .containsEntry("mass.marginPercentOfTarget", 20.0)
                .containsEntry("mass.heaviestCaseG", 2080.0)
                .containsEntry("mass.standardUncertaintyG", 100.0)
                .containsEntry("mass.band95LowG", 1884.004)
                .containsEntry("mass.band95HighG", 2275.996);
    }

    @Test
    void leavesOutWhatIsNotKnown() {
        Map<String, Double> figures = BuildReview.of(Ledgers.withTarget(2000, null, Ledgers.with(PACK, TRAY)))
                .figures();
        assertThat(figures)
                .containsEntry("mass.unknownLines", 1.0)
                .containsKey("mass.targetG")
                .doesNotContainKeys(
                        "mass.ceilingG", "mass.band95LowG", "mass.band95HighG", "mass.probabilityWithinTarget");
        assertThat(BuildReview.of(Ledgers.with(PACK)).figures())
                .doesNotContainKeys("mass.targetG", "mass.marginG", "mass.probabilityWithinTarget");
    }

    @Test
    void putsTheWorstFindingFirst() {
        Build build = Ledgers.withBooking(42, Ledgers.withTarget(1000, null, Ledgers.with(TRAY, PACK)));
        BuildReview review = BuildReview.of(build);
        assertThat(review.findings())
                .extracting(Finding::code)
                .containsExactly(
                        "mass.target",
                        "mass.unknown",
                        "balance.no-limits",
                        "balance.no-station",
                        "power.nothing",
                        "radio.nothing",
                        "outputs.nothing",
                        "mass.booking");
        assertThat(review.verdict(Budget.MASS)).isEqualTo(Verdict.BREAKS);
        assertThat(review.verdict()).isEqualTo(Verdict.BREAKS);
    }

    @Test
    void neverCallsFineWhatIsNotKnown() {
        Build roomy = Ledgers.withTarget(20_000, 0.0, Ledgers.with(PACK));
        assertThat(BuildReview.of(roomy).verdicts())
                .isEqualTo(Map.of(
                        Budget.MASS,
                        Verdict.HOLDS,
                        Budget.BALANCE,
                        Verdict.UNKNOWN,
                        Budget.POWER,
                        Verdict.UNKNOWN,
                        Budget.RADIO,
                        Verdict.UNKNOWN,
                        Budget.OUTPUTS,
                        Verdict.UNKNOWN));
        assertThat(BuildReview.of(roomy.withLines(List.of(PACK, TRAY))).verdicts())
                .isEqualTo(Map.of(
                        Budget.MASS,
                        Verdict.UNKNOWN,
                        Budget.BALANCE,
                        Verdict.UNKNOWN,
                        Budget.POWER,
                        Verdict.UNKNOWN,
                        Budget.RADIO,
                        Verdict.UNKNOWN,
                        Budget.OUTPUTS,
                        Verdict.UNKNOWN));
    }

    @Test
    void findsWhatConcernsOneLine() {
        BuildReview review = BuildReview.of(Ledgers.with(PACK, TRAY));
        assertThat(review.findingsOfLine("tray")).extracting(Finding::code).containsExactly("mass.unknown");
        assertThat(review.findingsOfLine("pack")).isEmpty();
    }

    @Test
    void writesItsSentencesInAMembersUnitsAndItsFiguresInGrams() {
        Build build = Ledgers.withTarget(1000, null, Ledgers.with(PACK));
        BuildReview ounces = BuildReview.of(build, new Figures(UnitSystem.OUNCE_INCH));
        assertThat(ounces.figures()).isEqualTo(BuildReview.of(build).figures());
        assertThat(ounces.verdicts()).isEqualTo(BuildReview.of(build).verdicts());
        assertThat(Said.sentence(ounces.finding("mass.target").orElseThrow())).contains("52.91 oz");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 50);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void doesNotDependOnTheOrderOfTheLines(long seed) {
        Build build = Builds.seeded(seed);
        List<PartLine> shuffled = new ArrayList<>(build.lines());
        Collections.shuffle(shuffled, new Random(seed));
        BuildReview inOrder = BuildReview.of(build);
        BuildReview mixed = BuildReview.of(build.withLines(shuffled));
        assertThat(mixed.figures()).isEqualTo(inOrder.figures());
        assertThat(mixed.verdicts()).isEqualTo(inOrder.verdicts());
        assertThat(mixed.findings()).containsExactlyInAnyOrderElementsOf(inOrder.findings());
        assertThat(mixed.massForecast().weighNext())
                .isEqualTo(inOrder.massForecast().weighNext());
    }
}
