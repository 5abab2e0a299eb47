package dev.ledgerwing.core.balance;

import static dev.ledgerwing.core.balance.Balances.at;
import static dev.ledgerwing.core.balance.Balances.certain;
import static dev.ledgerwing.core.balance.Balances.mirrored;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** By derivation. */
class BalanceStatementTest {

    private static final PartLine BODY = certain("body", 900, 300);
    private static final PartLine PACK = certain("pack", 100, 100);

    @Test
    void linesAtHomeAreLeftOutAndExtraItemsAdded() {
        ExtraItem bottle = new ExtraItem("Bottle", Mass.ofGrams(100), Basis.WEIGHED, at(700, 0, 0));
        Build build = Ledgers.withCases(
                Ledgers.with(BODY, PACK), Ledgers.loadCase("other", Purpose.FLIGHT, List.of("pack"), bottle));
        assertThat(Balances.cg(build).xMm()).isEqualTo(280);
        assertThat(cg(build, "other").xMm()).isEqualTo(340);
    }

    @Test
    void aMovedLineSitsWhereTheCaseSaysEvenWhenItIsStowed() {
        Build build = Ledgers.withCases(
                Ledgers.with(BODY, PACK), loadCase("moved", Map.of("pack", at(200, 10, -20)), List.of("pack")));
        assertThat(cg(build, "moved")).isEqualTo(new Cg(290, 1, -2));
    }

    @Test
    void aStowedLineSitsAtItsStowedStation() {
        PartLine leg = PACK.withPlace(new LinePlace(at(100, 0, 0), null, at(150, 0, 0), null, null, null));
        Build build = Ledgers.withCases(Ledgers.with(BODY, leg), loadCase("up", Map.of(), List.of("pack")));
        assertThat(cg(build, "up").xMm()).isEqualTo(285);
    }

    @Test
    void aStowedLineWithoutAStowedStationIsNowhere() {
        Build build = Ledgers.withCases(Ledgers.with(BODY, PACK), loadCase("up", Map.of(), List.of("pack")));
        CaseBalance up = BalanceStatement.of(build).loadCase("up").orElseThrow();
        assertThat(up.isKnown()).isFalse();
        assertThat(up.withoutStation()).extracting(row -> row.row().line()).containsExactly("pack");
        assertThat(BalanceStatement.of(build).design().isKnown()).isTrue();
    }

    @Test
    void growthActsAtTheStationOfEachLine() {
        PartLine growing = Balances.line("tail", Ledgers.grownBy(50, 200), 1000);
        CaseBalance design = BalanceStatement.of(Ledgers.with(certain("nose", 200, 0), growing))
                .design();
        assertThat(design.cg(MassState.BASIC).orElseThrow().xMm()).isEqualTo(500);
        assertThat(design.cg(MassState.PREDICTED).orElseThrow().xMm()).isEqualTo(600);
    }

    @Test
    void aMirroredLineBalancesOnTheCentreLine() {
        Build build = Ledgers.with(mirrored("servo", 2, 50, at(400, 250, 30), 250));
        assertThat(Balances.cg(build)).isEqualTo(new Cg(400, 0, 30));
    }

    @Test
    void aBookingActsWhereTheScalesSaidAtPredictedMassOnly() {
        Moments moments = Moments.of(Mass.ofGrams(100), at(1000, 0, 0));
        Build build = Ledgers.with(certain("all", 900, 0))
                .withBooking(new Booking(Mass.ofGrams(100), "hall scales", moments));
        CaseBalance design = BalanceStatement.of(build).design();
        assertThat(design.cg(MassState.BASIC).orElseThrow().xMm()).isZero();
        assertThat(design.cg(MassState.PREDICTED).orElseThrow().xMm()).isEqualTo(100);
    }

    @Test
    void aBookingWithoutMomentsActsAmidWhatWasWeighed() {
        PartLine panel = Ledgers.inWing(Ledgers.certain("panel", 300)).withPlace(LinePlace.at(at(700, 0, 0)));
        Build build = Ledgers.with(BODY, panel);
        Booking glue = new Booking(Mass.ofGrams(-30), "glue");
        Build whole = build.withBooking(glue);
        Build wing = build.withAssemblyBookings(List.of(new AssemblyBooking("wing", glue)));
        assertThat(predicted(whole).xMm()).isCloseTo(400, within(1e-6));
        assertThat(predicted(wing).xMm()).isCloseTo((900 * 300 + 270 * 700) / 1170.0, within(1e-6));
    }

    @Test
    void whatIsBookedOnAnAssemblyStaysAtHomeWithIt() {
        PartLine panel = Ledgers.inWing(Ledgers.certain("panel", 300)).withPlace(LinePlace.at(at(700, 0, 0)));
        Build build = Ledgers.withCases(
                Ledgers.with(BODY, panel)
                        .withAssemblyBookings(
                                List.of(new AssemblyBooking("wing", new Booking(Mass.ofGrams(30), "glue")))),
                Ledgers.loadCase("wing-off", Purpose.GROUND, List.of("panel")));
        assertThat(BalanceStatement.of(build)
                        .loadCase("wing-off")
                        .orElseThrow()
                        .predicted()
                        .mass())
                .isEqualTo(Mass.ofGrams(900));
    }

    @Test
    void aBookingAmidNothingIsInNoSum() {
        Build build =
                Ledgers.with(Ledgers.certain("nowhere", 100)).withBooking(new Booking(Mass.ofGrams(50), "scales"));
        assertThat(BalanceStatement.of(build).design().cg(MassState.PREDICTED)).isEmpty();
    }

    @Test
    void groupsFollowTheAssembliesThenWhatIsCarriedAndBooked() {
        ExtraItem bottle = new ExtraItem("Bottle", Mass.ofGrams(100), Basis.WEIGHED, at(700, 0, 0));
        Build build = Ledgers.withExactCases(Ledgers.with(BODY), List.of(Ledgers.designCase(List.of(), bottle)))
                .withBooking(new Booking(Mass.ofGrams(10), "scales"));
        BalanceStatement statement = BalanceStatement.of(build);
        assertThat(statement.byAssembly(statement.design()))
                .extracting(BalanceGroup::title)
                .containsExactly("Wing", "Fuselage", "Carried: Survey", "Booked on the whole airframe");
    }

    @Test
    void nothingAboardHasNoCg() {
        CaseBalance empty = BalanceStatement.of(Ledgers.with()).design();
        assertThat(empty.cg(MassState.BASIC)).isEmpty();
        assertThat(empty.isKnown()).isFalse();
        assertThat(empty.inertia()).isEmpty();
    }

    @Test
    void aLineOfUnknownMassIsInNoSumAndIsNamed() {
        PartLine tray = Balances.line("tray", Ledgers.notKnown(), 100);
        CaseBalance design = BalanceStatement.of(Ledgers.with(BODY, tray)).design();
        assertThat(design.cg(MassState.BASIC).orElseThrow().xMm()).isEqualTo(300);
        assertThat(design.withoutMass()).extracting(row -> row.row().line()).containsExactly("tray");
        assertThat(design.isKnown()).isFalse();
    }

    /** Common practice: moving the wing forward moves the CG aft in per cent of its chord, though by less than s / c: the wing has mass. */
    @Test
    void movingTheWingForwardMovesTheCgAftInPerCentOfItsChord() {
        double before = percentWithWingAt(500);
        double after = percentWithWingAt(450);
        double share = 400 / 2400.0;
        assertThat(after - before).isPositive();
        assertThat(after - before).isCloseTo(100 * 50 * (1 - share) / 250, within(1e-6));
        assertThat(after - before)
                .as("the naive formula forgets that the mass moves too")
                .isLessThan(100 * 50 / 250.0);
    }

    private static double percentWithWingAt(double apexXMm) {
        Build build = Ledgers.with(certain("body", 2000, 560), certain("wing", 400, apexXMm + 100))
                .withGeometry(Balances.geometry(
                        Balances.mirroredWing(apexXMm, Balances.panel(900, 250, 250, 0, 0)), null, null, null));
        BalanceStatement statement = BalanceStatement.of(build);
        Double percent = statement.shape().percentMac(Balances.cg(build).xMm());
        assertThat(percent).isNotNull();
        return percent;
    }

    private static LoadCase loadCase(String code, Map<String, Station> moved, List<String> stowed) {
        return new LoadCase(code, "Case " + code, Purpose.FLIGHT, false, List.of(), moved, stowed, List.of());
    }

    private static Cg cg(Build build, String code) {
        return BalanceStatement.of(build)
                .loadCase(code)
                .flatMap(each -> each.cg(MassState.BASIC))
                .orElseThrow();
    }

    private static Cg predicted(Build build) {
        return BalanceStatement.of(build).design().cg(MassState.PREDICTED).orElseThrow();
    }

    @Test
    void anUncertaintyOfItsOwnBelongsToTheLine() {
        PartLine part = Ledgers.certain("a", 100)
                .withPlace(new LinePlace(at(0, 0, 0), Length.ofMm(1.5), null, null, null, null));
        assertThat(BalanceStatement.of(Ledgers.with(part)).design().rows())
                .extracting(PlacedRow::stationUncertainty)
                .containsExactly(Length.ofMm(1.5));
    }
}
