package dev.ledgerwing.core.power.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SolarArray.Connection;
import dev.ledgerwing.core.power.energy.Flights;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChargingTest {

    private static final FeedElement DIODE = FeedElement.diode("Diode", 10.0, 0.4);
    private static final PowerSource PACK = Flights.pack("one", 5000.0);
    private static final PowerSource OTHER_PACK = Flights.pack("two", 2000.0);
    private static final PowerSource CELLS = Suns.cells(Suns.DIRECT);

    @Test
    void reachesThePackOnTheRailOfTheCells() {
        assertThat(charged(List.of(PACK, CELLS), Flights.feed("cells", "main"), Flights.feed("one", "main")))
                .containsExactly("one");
    }

    @Test
    void goesThroughADiodeWithItsArrowAndThroughContactsAgainstIt() {
        FeedElement fuse = FeedElement.rated("Fuse", Kind.FUSE, 10.0);
        assertThat(charged(
                        List.of(PACK, CELLS), Flights.feed("cells", "main", DIODE), Flights.feed("one", "main", fuse)))
                .containsExactly("one");
    }

    @Test
    void doesNotGoBackThroughTheDiodeOfAPack() {
        Charging charging =
                charging(List.of(PACK, CELLS), Flights.feed("cells", "main"), Flights.feed("one", "main", DIODE));
        assertThat(charging.packs()).isEmpty();
        assertThat(charging.byCells().get(CELLS))
                .extracting(ChargeWay::inTheWay)
                .containsExactly(DIODE);
    }

    @Test
    void doesNotGoThroughARegulator() {
        assertThat(charged(
                        List.of(PACK, CELLS),
                        Flights.feed("cells", "main", Builds.regulator(12)),
                        Flights.feed("one", "main")))
                .isEmpty();
        assertThat(charged(
                        List.of(PACK, CELLS),
                        Flights.feed("cells", "main"),
                        Flights.feed("one", "main", Builds.regulator(12))))
                .isEmpty();
    }

    @Test
    void goesOnFromRailToRail() {
        assertThat(charged(
                        List.of(PACK, OTHER_PACK, CELLS),
                        Flights.feed("cells", "main"),
                        Flights.feed("one", "main"),
                        Flights.feed("main", "other", DIODE),
                        Flights.feed("two", "other")))
                .containsExactly("one", "two");
    }

    @Test
    void goesBackFromRailToRailUnlessADiodeIsThere() {
        assertThat(charged(
                        List.of(PACK, CELLS),
                        Flights.feed("cells", "other"),
                        Flights.feed("one", "main"),
                        Flights.feed("main", "other")))
                .containsExactly("one");
        assertThat(charged(
                        List.of(PACK, CELLS),
                        Flights.feed("cells", "other"),
                        Flights.feed("one", "main"),
                        Flights.feed("main", "other", DIODE)))
                .isEmpty();
    }

    @Test
    void prefersAnOpenWayToOneThatIsBlocked() {
        Feed second = new Feed("second", "Second", "one", "main", List.of());
        assertThat(charged(
                        List.of(PACK, CELLS),
                        Flights.feed("cells", "main"),
                        Flights.feed("one", "main", DIODE),
                        second))
                .containsExactly("one");
    }

    @Test
    void endsWhereRailsFeedEachOtherRoundAbout() {
        assertThat(charged(
                        List.of(PACK, CELLS),
                        Flights.feed("cells", "main"),
                        Flights.feed("main", "other"),
                        Flights.feed("other", "main"),
                        Flights.feed("one", "other")))
                .containsExactly("one");
    }

    /** By derivation: straight on the pack, cells give about their short-circuit current. */
    @Test
    void givesTheShortCircuitCurrentStraightOnThePack() {
        ChargeWay way = way(Suns.on(PACK, Suns.DIRECT));
        assertThat(way.nominalA()).isEqualTo(2.2);
        assertThat(way.worstA()).isEqualTo(2.2);
    }

    /** By derivation: 90 % of 30 W at 11.1 V, and at 9 V with the pack empty. */
    @Test
    void keepsThePowerThroughATracker() {
        ChargeWay way = way(Suns.on(PACK, Suns.TRACKED));
        assertThat(way.nominalA()).isCloseTo(27 / 11.1, within(1e-9));
        assertThat(way.worstA()).isCloseTo(3, within(1e-9));
    }

    /** Common practice, no source: 250 W into a three-cell pack are 19.8 A at 12.6 V and 22.5 A at 11.1 V. */
    @Test
    void agreesWithWhatChargersArePrintedWith() {
        SolarArray array =
                new SolarArray(250.0, 30.0, 36.0, 9.0, null, null, 0, 0, false, Connection.TRACKER, 100.0, null);
        assertThat(way(Suns.on(PACK, array)).nominalA()).isCloseTo(22.5, within(0.05));
    }

    @Test
    void addsUpAllCellsOfAPack() {
        PowerSource more = PowerSource.solar("more", "More cells", null, Suns.TRACKED);
        Build build = Suns.with(
                List.of(PACK, CELLS, more),
                Flights.feed("cells", "main"),
                Flights.feed("more", "main"),
                Flights.feed("one", "main"));
        assertThat(Charging.of(build).pack("one").orElseThrow().worstA()).isCloseTo(5.2, within(1e-9));
    }

    @Test
    void doesNotKnowASumWithAnUnknownInIt() {
        PowerSource more = PowerSource.solar(
                "more",
                "More cells",
                null,
                new SolarArray(null, null, null, null, null, null, 0, 0, false, Connection.TRACKER, 90.0, null));
        Build build = Suns.with(
                List.of(PACK, CELLS, more),
                Flights.feed("cells", "main"),
                Flights.feed("more", "main"),
                Flights.feed("one", "main"));
        assertThat(Charging.of(build).pack("one").orElseThrow().worstA()).isNull();
    }

    /** By derivation: 18 V less 0.3 % of it for each degree above 25 °C; the best point moves by as many volts. */
    @Test
    void movesTheVoltsOfTheCellsWithTheirTemperature() {
        CellVolts volts = new CellVolts(Suns.DIRECT);
        assertThat(volts.openV(25)).isCloseTo(18, within(1e-9));
        assertThat(volts.openV(-10)).isCloseTo(19.89, within(1e-9));
        assertThat(volts.bestV(70)).isCloseTo(15 - 2.43, within(1e-9));
    }

    @Test
    void assumesNoTemperatureCoefficient() {
        CellVolts volts = new CellVolts(Suns.direct(15.0, 18.0, null));
        assertThat(volts.openV(25)).isNull();
        assertThat(volts.bestV(25)).isNull();
    }

    private static ChargeWay way(Build build) {
        return Charging.of(build).pack("one").orElseThrow().ways().get(0);
    }

    private static List<String> charged(List<PowerSource> sources, Feed... feeds) {
        return charging(sources, feeds).packs().stream()
                .map(charge -> charge.battery().code())
                .toList();
    }

    private static Charging charging(List<PowerSource> sources, Feed... feeds) {
        return Charging.of(Suns.with(sources, feeds));
    }
}
