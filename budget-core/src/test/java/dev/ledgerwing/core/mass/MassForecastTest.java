package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MassForecastTest {

    private static final Category[] CATEGORIES = Category.values();
    private static final Basis[] BASES = Basis.values();

    /** By derivation: u of one is 20 g. Independent: 20 sqrt(50). Correlated: sqrt(0.7 x 50 x 20^2 + 0.3 x 1000^2). */
    @ParameterizedTest
    @CsvSource({"0, 141.42", "0.3, 560.36", "1, 1000"})
    void doesNotLetFiftyGuessesCancelOut(double correlation, double expectedG) {
        Build build = Ledgers.judgedWith(Ledgers.guessesCorrelatedBy(correlation), fiftyGuesses());
        assertThat(MassForecast.of(build).standardUncertaintyG()).isCloseTo(expectedG, within(0.005));
    }

    @Test
    void takesTheCorrelationsTheBuildIsJudgedBy() {
        assertThat(MassForecast.of(fiftyGuesses()).standardUncertaintyG()).isCloseTo(560.36, within(0.005));
    }

    private static Build fiftyGuesses() {
        return Ledgers.with(IntStream.range(0, 50)
                .mapToObj(i -> Ledgers.line("L" + i, Category.STRUCTURE, 100, Basis.GUESSED))
                .toList());
    }

    /** By derivation: two groups of one line each are independent, 3-4-5. */
    @Test
    void letsCategoriesAndBasesErrApart() {
        Build categories = Ledgers.with(
                Ledgers.line("a", Category.STRUCTURE, 150, Basis.GUESSED),
                Ledgers.line("b", Category.WIRING, 200, Basis.GUESSED));
        Build bases = Ledgers.with(
                Ledgers.line("a", Category.STRUCTURE, 150, Basis.GUESSED),
                Ledgers.line("b", Category.STRUCTURE, 500, Basis.CALCULATED));
        assertThat(MassForecast.of(categories).standardUncertaintyG()).isCloseTo(50, within(1e-9));
        assertThat(MassForecast.of(bases).standardUncertaintyG()).isCloseTo(50, within(1e-9));
    }

    /** EA-4/02, supplement S2, its contributions taken as the standard uncertainties of five parts, in grams for milligrams. */
    @Test
    void combinesWeighedPartsAsThePublishedBudgetOfATenKilogramWeight() {
        List<PartLine> parts = new ArrayList<>();
        for (double u : new double[] {22.5, 8.660, 14.2, 5.774, 5.774}) {
            LineMass mass = new LineMass(Mass.ofGrams(2000), Basis.WEIGHED, null, Mass.ofGrams(u), null);
            parts.add(Ledgers.line("u" + parts.size(), Category.STRUCTURE, 1, mass));
        }
        assertThat(MassForecast.of(Ledgers.with(parts)).standardUncertaintyG()).isCloseTo(29.1, within(0.05));
    }

    /** By derivation, with the tabulated 1.96 of the normal distribution. */
    @Test
    void spansTheBandAboutThePredictedMass() {
        MassForecast forecast =
                MassForecast.of(Ledgers.with(Ledgers.line("a", Category.STRUCTURE, 500, Basis.GUESSED)));
        assertThat(forecast.standardUncertaintyG()).isCloseTo(100, within(1e-9));
        assertThat(forecast.band95())
                .isEqualTo(new MassBand(Mass.ofGrams(404.004), Mass.ofGrams(795.996), Mass.ofGrams(195.996)));
    }

    /** Normal about the predicted mass of 600 g with u = 100 g: Phi(0), Phi(1), Phi(-2) as tabulated. */
    @ParameterizedTest
    @CsvSource({"600, 0.5", "700, 0.841344746", "400, 0.022750132"})
    void tellsTheProbabilityOfStayingWithinTheTarget(double targetG, double expected) {
        Build build = Ledgers.with(Ledgers.line("a", Category.STRUCTURE, 500, Basis.GUESSED));
        assertThat(MassForecast.of(Ledgers.withTarget(targetG, null, build)).probabilityWithinTarget())
                .isCloseTo(expected, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1000, 1", "999.999, 0"})
    void isSureWhereNothingIsUncertain(double targetG, double expected) {
        Build build = Ledgers.withTarget(targetG, null, Ledgers.with(Ledgers.certain("a", 1000)));
        assertThat(MassForecast.of(build).probabilityWithinTarget()).isEqualTo(expected);
    }

    @Test
    void givesNoProbabilityWhereAnythingIsMissing() {
        Build known = Ledgers.with(Ledgers.certain("a", 1000));
        Build unknown =
                Ledgers.with(Ledgers.certain("a", 1000), Ledgers.line("b", Category.STRUCTURE, 1, LineMass.notKnown()));
        assertThat(MassForecast.of(known).probabilityWithinTarget()).isNull();
        assertThat(MassForecast.of(Ledgers.withTarget(5000, null, unknown)).probabilityWithinTarget())
                .isNull();
        assertThat(MassForecast.of(Ledgers.withTarget(5000, null, Ledgers.with()))
                        .probabilityWithinTarget())
                .isNull();
    }

    @Test
    void ranksWhatWeighingTakesOffTheBand() {
        Build build = Ledgers.with(
                Ledgers.line("small", Category.STRUCTURE, 50, Basis.GUESSED),
                Ledgers.line("large", Category.STRUCTURE, 800, Basis.GUESSED),
                Ledgers.line("sure", Category.BATTERY, 1450, Basis.WEIGHED),
                Ledgers.line("listed", Category.AVIONICS, 300, Basis.CATALOGUE));
        assertThat(MassForecast.of(build).weighNext())
                .extracting(next -> next.row().line())
                .containsExactly("large", "small", "listed");
    }

    /** Another way to the same figure: the line is weighed in the record, and the forecast made anew. */
    @Test
    void foretellsTheBandThatWeighingLeaves() {
        List<PartLine> lines = mixedLines(60);
        Build build = Ledgers.with(lines);
        List<WeighNext> ranking = MassForecast.of(build).weighNext();
        assertThat(ranking).hasSizeGreaterThan(30);
        for (WeighNext next : ranking) {
            Build weighed = Ledgers.with(lines.stream()
                    .map(line -> line.id().equals(next.row().line()) ? weighed(line) : line)
                    .toList());
            assertThat(next.after().mg())
                    .as("after weighing %s", next.row().line())
                    .isCloseTo(MassForecast.of(weighed).halfWidth95().mg(), within(1L));
            assertThat(next.before()).isEqualTo(MassForecast.of(build).halfWidth95());
        }
    }

    private static PartLine weighed(PartLine line) {
        Mass unit = line.totalMass().mg() == 0
                ? Mass.ZERO
                : new Mass(line.totalMass().mg() / line.quantity());
        return Ledgers.line(line.id(), line.category(), line.quantity(), LineMass.of(unit, Basis.WEIGHED));
    }

    private static List<PartLine> mixedLines(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> Ledgers.line(
                        "L" + i,
                        CATEGORIES[i % CATEGORIES.length],
                        1 + i % 3,
                        LineMass.of(Mass.ofGrams(20 + 7 * i), BASES[i / 2 % BASES.length])))
                .toList();
    }

    @Test
    void offersNoWeighingThatWouldWidenTheBand() {
        LineMass exact = new LineMass(Mass.ofGrams(100), Basis.CATALOGUE, null, Mass.ZERO, null);
        assertThat(MassForecast.of(Ledgers.with(Ledgers.line("a", Category.RADIO, 1, exact)))
                        .weighNext())
                .isEmpty();
    }

    @Test
    void takesTenThousandLines() {
        MassForecast forecast = MassForecast.of(Ledgers.with(mixedLines(10_000)));
        assertThat(forecast.weighNext()).hasSizeGreaterThan(5000);
        assertThat(forecast.standardUncertaintyG()).isPositive();
    }

    @Test
    void leavesWeighedPartsUncorrelatedByDefault() {
        assertThat(Arrays.stream(BASES).map(MassUncertainty.OWN_CHOICE::correlation))
                .containsExactly(0.3, 0.3, 0.1, 0.0);
    }
}
