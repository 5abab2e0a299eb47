package dev.ledgerwing.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import dev.ledgerwing.core.Ledgers;
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

    private static final PartLine SPAR = Ledgers.inWing(Ledgers.line("spar", Category.STRUCTURE, 400, Basis.GUESSED));
    private static final PartLine SERVOS =
            Ledgers.line("servos", Category.SERVO, 4, LineMass.of(Mass.ofGrams(21.5), Basis.CATALOGUE));
    private static final PartLine PACK = Ledgers.line("pack", Category.BATTERY, 1450, Basis.WEIGHED);
    private static final PartLine TRAY = Ledgers.line("tray", Category.STRUCTURE, 1, Ledgers.notKnown());

    @Test
    void addsGrowthByCategoryAndBasisToWhatIsAboard() {
        MassStatement statement = MassStatement.of(Ledgers.with(SPAR, SERVOS, PACK));
        assertThat(statement.basic()).isEqualTo(Mass.ofGrams(400 + 86 + 1450));
        assertThat(statement.growth()).isEqualTo(Mass.ofGrams(80 + 2.58));
        assertThat(statement.predicted()).isEqualTo(Mass.ofGrams(1936 + 82.58));
    }

    @ParameterizedTest
    @EnumSource(Category.class)
    void letsNoWeighedPartGrow(Category category) {
        MassStatement statement = MassStatement.of(Ledgers.with(Ledgers.line("x", category, 123.4, Basis.WEIGHED)));
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
        PartLine own = Ledgers.line("x", Category.WIRING, 1, Ledgers.grownBy(12.5, 80));
        assertThat(MassStatement.of(Ledgers.with(own)).growth()).isEqualTo(Mass.ofGrams(10));
    }

    @Test
    void roundsGrowthToTheMilligramLineByLine() {
        PartLine screw = Ledgers.line("x", Category.FASTENING, 1, Ledgers.grownBy(50, 0.001));
        PartLine other = Ledgers.line("y", Category.FASTENING, 1, Ledgers.grownBy(49, 0.001));
        assertThat(MassStatement.of(Ledgers.with(screw, other)).growth()).isEqualTo(new Mass(1));
    }

    @Test
    void countsAPartOfUnknownMassAndAddsNothingForIt() {
        MassStatement statement = MassStatement.of(Ledgers.with(PACK, TRAY));
        assertThat(statement.basic()).isEqualTo(Mass.ofGrams(1450));
        assertThat(statement.unknown()).extracting(MassRow::line).containsExactly("tray");
        assertThat(statement.total().isComplete()).isFalse();
        assertThat(statement.unknown().get(0).basic()).isNull();
        assertThat(statement.unknown().get(0).predicted()).isNull();
    }

    @Test
    void findsUnknownMassesOfPartsThatStayAtHomeAndOfThingsCarried() {
        Build build = Ledgers.withExactCases(
                Ledgers.with(PACK, TRAY),
                List.of(
                        Ledgers.designCase(List.of("tray")),
                        Ledgers.loadCase(
                                "ferry", Purpose.FLIGHT, List.of(), Ledgers.extra("Box", null, Basis.GUESSED))));
        MassStatement statement = MassStatement.of(build);
        assertThat(statement.total().isComplete()).isTrue();
        assertThat(statement.unknownCount()).isEqualTo(2);
    }

    @Test
    void leavesOutWhatTheDesignCaseLeavesAtHomeAndAddsWhatItCarries() {
        Build build = Ledgers.withExactCases(
                Ledgers.with(SPAR, PACK),
                List.of(Ledgers.designCase(List.of("pack"), Ledgers.extra("Bottles", 300.0, Basis.GUESSED))));
        MassStatement statement = MassStatement.of(build);
        assertThat(statement.basic()).isEqualTo(Mass.ofGrams(700));
        assertThat(statement.notAboard()).extracting(MassRow::line).containsExactly("pack");
        assertThat(statement.row("pack").orElseThrow().basic()).isEqualTo(Mass.ofGrams(1450));
    }

    @Test
    void letsThingsCarriedGrowAsPayloadOfTheirBasis() {
        Build build = Ledgers.withExactCases(
                Ledgers.with(), List.of(Ledgers.designCase(List.of(), Ledgers.extra("Bottles", 300.0, Basis.GUESSED))));
        double percent = GrowthTable.OWN_CHOICE.percent(Category.PAYLOAD, Basis.GUESSED);
        assertThat(MassStatement.of(build).growth())
                .isEqualTo(Mass.ofGrams(300).percent(percent))
                .isEqualTo(Mass.ofGrams(60));
    }

    @ParameterizedTest
    @CsvSource({"42, 1492", "-42, 1408"})
    void countsABookingOfEitherSignInThePredictedMassAlone(double bookedG, double predictedG) {
        MassStatement statement = MassStatement.of(Ledgers.withBooking(bookedG, Ledgers.with(PACK)));
        assertThat(statement.basic()).isEqualTo(Mass.ofGrams(1450));
        assertThat(statement.predicted()).isEqualTo(Mass.ofGrams(predictedG));
    }

    @Test
    void showsEveryAssemblyWithItsSubtotalAndWhatIsCarriedApart() {
        Build build = Ledgers.withExactCases(
                Ledgers.with(SERVOS, PACK),
                List.of(Ledgers.designCase(List.of(), Ledgers.extra("Bottles", 300.0, Basis.GUESSED))));
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
        assertThat(MassStatement.of(Ledgers.with(SERVOS, PACK, SPAR)).byCategory())
                .extracting(MassGroup::code)
                .containsExactly("structure", "battery", "servo");
    }

    @Test
    void saysHowMuchOfTheBasicMassHasBeenWeighed() {
        MassStatement statement = MassStatement.of(Ledgers.with(
                Ledgers.line("g", Category.STRUCTURE, 100, Basis.GUESSED),
                Ledgers.line("c", Category.STRUCTURE, 30, Basis.CALCULATED),
                Ledgers.line("l", Category.STRUCTURE, 20, Basis.CATALOGUE),
                Ledgers.line("w", Category.STRUCTURE, 50, Basis.WEIGHED)));
        assertThat(statement.total().weighedPercent()).isEqualTo(25.0);
        assertThat(MassStatement.of(Ledgers.with()).total().weighedPercent()).isNull();
    }

    @Test
    void takesTheHeaviestFlightCaseAndNoGroundCase() {
        Build build = Ledgers.withCases(
                Ledgers.with(SPAR, PACK),
                Ledgers.loadCase("bare", Purpose.FLIGHT, List.of("pack")),
                Ledgers.loadCase("full", Purpose.FLIGHT, List.of(), Ledgers.extra("Bottles", 300.0, Basis.WEIGHED)),
                Ledgers.loadCase("stand", Purpose.GROUND, List.of(), Ledgers.extra("Rig", 5000.0, Basis.WEIGHED)));
        CaseMass heaviest = MassStatement.of(build).heaviestFlight();
        assertThat(heaviest.loadCase().code()).isEqualTo("full");
        assertThat(heaviest.basic()).isEqualTo(Mass.ofGrams(2150));
        assertThat(heaviest.predicted()).isEqualTo(Mass.ofGrams(2230));
    }

    @ParameterizedTest
    @CsvSource({"CONCEPT, 15", "DESIGN, 10", "BUILD, 5", "FLIGHT_TEST, 2", "IN_SERVICE, 0"})
    void wantsTheReserveOfTheStage(Stage stage, double percent) {
        Build build = Ledgers.atStage(stage, Ledgers.withTarget(6800, null, Ledgers.with(PACK)));
        assertThat(MassStatement.of(build).reservePercent()).isEqualTo(percent);
    }

    @Test
    void letsTheAirframeWantAnotherReserve() {
        assertThat(MassStatement.of(Ledgers.withTarget(6800, 7.5, Ledgers.with(PACK)))
                        .reservePercent())
                .isEqualTo(7.5);
    }
}
