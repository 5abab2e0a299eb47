package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import dev.ledgerwing.core.Builds;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.GrowthTable;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MassStatementTest {

    private static final PartLine SPAR = Builds.inWing(Builds.line("spar", Category.STRUCTURE, 400, Basis.GUESSED));
    private static final PartLine SERVOS =
            Builds.line("servos", Category.SERVO, 4, LineMass.of(Mass.ofGrams(21.5), Basis.CATALOGUE));
    private static final PartLine PACK = Builds.line("pack", Category.BATTERY, 1450, Basis.WEIGHED);
    private static final PartLine TRAY = Builds.line("tray", Category.STRUCTURE, 1, Builds.notKnown());

    @Test
    void addsGrowthByCategoryAndBasisToWhatIsAboard() {
        MassStatement statement = MassStatement.of(Builds.with(SPAR, SERVOS, PACK));
        assertThat(statement.basic()).isEqualTo(Mass.ofGrams(400 + 86 + 1450));
        assertThat(statement.growth()).isEqualTo(Mass.ofGrams(80 + 2.58));
        assertThat(statement.predicted()).isEqualTo(Mass.ofGrams(1936 + 82.58));
    }

    @ParameterizedTest
    @EnumSource(Category.class)
    void letsNoWeighedPartGrow(Category category) {
        MassStatement statement = MassStatement.of(Builds.with(Builds.line("x", category, 123.4, Basis.WEIGHED)));
        assertThat(statement.growth()).isEqualTo(Mass.ZERO);
    }

    /** The table only orders: published ones do not rise from one row of maturity to the next (SAWE RP A-3, from memory). */
    @ParameterizedTest
    @EnumSource(Category.class)
    void letsAPartGrowNoMoreTheBetterItIsKnown(Category category) {
        GrowthTable table = GrowthTable.OWN_CHOICE;
        assertThat(Arrays.stream(Basis.values()).map(basis -> table.percent(category, basis)))
                .isSortedAccordingTo(Comparator.reverseOrder());
    }

    @Test
    void letsALineOverrideTheTable() {
        PartLine own = Builds.line("x", Category.WIRING, 1, Builds.grownBy(12.5, 80));
        assertThat(MassStatement.of(Builds.with(own)).growth()).isEqualTo(Mass.ofGrams(10));
    }

    @Test
    void roundsGrowthToTheMilligramLineByLine() {
        PartLine screw = Builds.line("x", Category.FASTENING, 1, Builds.grownBy(50, 0.001));
        PartLine other = Builds.line("y", Category.FASTENING, 1, Builds.grownBy(49, 0.001));
        assertThat(MassStatement.of(Builds.with(screw, other)).growth()).isEqualTo(new Mass(1));
    }

    @Test
    void countsAPartOfUnknownMassAndAddsNothingForIt() {
        MassStatement statement = MassStatement.of(Builds.with(PACK, TRAY));
        assertThat(statement.basic()).isEqualTo(Mass.ofGrams(1450));
        assertThat(statement.unknown()).extracting(MassRow::line).containsExactly("tray");
        assertThat(statement.total().isComplete()).isFalse();
        assertThat(statement.unknown().get(0).basic()).isNull();
        assertThat(statement.unknown().get(0).predicted()).isNull();
    }

    @Test
    void findsUnknownMassesOfPartsThatStayAtHomeAndOfThingsCarried() {
        Build build = Builds.withExactCases(
                Builds.with(PACK, TRAY),
                List.of(
                        Builds.designCase(List.of("tray")),
                        Builds.loadCase("ferry", Purpose.FLIGHT, List.of(), Builds.extra("Box", null, Basis.GUESSED))));
        MassStatement statement = MassStatement.of(build);
        assertThat(statement.total().isComplete()).isTrue();
        assertThat(statement.unknownCount()).isEqualTo(2);
    }

    @Test
    void leavesOutWhatTheDesignCaseLeavesAtHomeAndAddsWhatItCarries() {
        Build build = Builds.withExactCases(
                Builds.with(SPAR, PACK),
                List.of(Builds.designCase(List.of("pack"), Builds.extra("Bottles", 300.0, Basis.GUESSED))));
        MassStatement statement = MassStatement.of(build);
        assertThat(statement.basic()).isEqualTo(Mass.ofGrams(700));
        assertThat(statement.notAboard()).extracting(MassRow::line).containsExactly("pack");
        assertThat(statement.row("pack").orElseThrow().basic()).isEqualTo(Mass.ofGrams(1450));
    }

    @Test
    void letsThingsCarriedGrowAsPayloadOfTheirBasis() {
        Build build = Builds.withExactCases(
                Builds.with(), List.of(Builds.designCase(List.of(), Builds.extra("Bottles", 300.0, Basis.GUESSED))));
        double percent = GrowthTable.OWN_CHOICE.percent(Category.PAYLOAD, Basis.GUESSED);
        assertThat(MassStatement.of(build).growth())
                .isEqualTo(Mass.ofGrams(300).percent(percent))
                .isEqualTo(Mass.ofGrams(60));
    }

    @ParameterizedTest
    @CsvSource({"42, 1492", "-42, 1408"})
    void countsABookingOfEitherSignInThePredictedMassAlone(double bookedG, double predictedG) {
        MassStatement statement = MassStatement.of(Builds.withBooking(bookedG, Builds.with(PACK)));
        assertThat(statement.basic()).isEqualTo(Mass.ofGrams(1450));
        assertThat(statement.predicted()).isEqualTo(Mass.ofGrams(predictedG));
    }

    @Test
    void showsEveryAssemblyWithItsSubtotalAndWhatIsCarriedApart() {
        Build build = Builds.withExactCases(
                Builds.with(SERVOS, PACK),
                List.of(Builds.designCase(List.of(), Builds.extra("Bottles", 300.0, Basis.GUESSED))));
        assertThat(MassStatement.of(build).byAssembly())
                .extracting(
                        MassGroup::code,
                        MassGroup::title,
                        group -> group.total().basic())
                .containsExactly(
                        tuple("wing", "Wing", Mass.ZERO),
                        tuple("fuselage", "Fuselage", Mass.ofGrams(1536)),
                        tuple(null, "Carried: Survey", Mass.ofGrams(300)));
    }

    @Test
    void groupsByCategoryInTheOrderOfTheCategories() {
        assertThat(MassStatement.of(Builds.with(SERVOS, PACK, SPAR)).byCategory())
                .extracting(MassGroup::code)
                .containsExactly("structure", "battery", "servo");
    }

    @Test
    void saysHowMuchOfTheBasicMassHasBeenWeighed() {
        PartLine guessed = Builds.line("x", Category.STRUCTURE, 150, Basis.GUESSED);
        PartLine weighed = Builds.line("y", Category.STRUCTURE, 50, Basis.WEIGHED);
        assertThat(MassStatement.of(Builds.with(guessed, weighed)).total().weighedPercent())
                .isEqualTo(25.0);
        assertThat(MassStatement.of(Builds.with()).total().weighedPercent()).isNull();
    }

    @Test
    void takesTheHeaviestFlightCaseAndNoGroundCase() {
        Build build = Builds.withCases(
                Builds.with(SPAR, PACK),
                Builds.loadCase("bare", Purpose.FLIGHT, List.of("pack")),
                Builds.loadCase("full", Purpose.FLIGHT, List.of(), Builds.extra("Bottles", 300.0, Basis.WEIGHED)),
                Builds.loadCase("stand", Purpose.GROUND, List.of(), Builds.extra("Rig", 5000.0, Basis.WEIGHED)));
        CaseMass heaviest = MassStatement.of(build).heaviestFlight();
        assertThat(heaviest.loadCase().code()).isEqualTo("full");
        assertThat(heaviest.basic()).isEqualTo(Mass.ofGrams(2150));
        assertThat(heaviest.predicted()).isEqualTo(Mass.ofGrams(2230));
    }

    @ParameterizedTest
    @CsvSource({"CONCEPT, 15", "DESIGN, 10", "BUILD, 5", "FLIGHT_TEST, 2", "IN_SERVICE, 0"})
    void wantsTheReserveOfTheStage(Stage stage, double percent) {
        Build build = Builds.atStage(stage, Builds.withTarget(6800, null, Builds.with(PACK)));
        assertThat(MassStatement.of(build).reservePercent()).isEqualTo(percent);
    }

    @Test
    void letsTheAirframeWantAnotherReserve() {
        assertThat(MassStatement.of(Builds.withTarget(6800, 7.5, Builds.with(PACK)))
                        .reservePercent())
                .isEqualTo(7.5);
    }
}
