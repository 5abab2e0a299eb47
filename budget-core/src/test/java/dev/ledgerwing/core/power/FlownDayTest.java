package dev.ledgerwing.core.power;

import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.fuse;
import static dev.ledgerwing.core.power.Supplies.linear;
import static dev.ledgerwing.core.power.Supplies.pack;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.rail;
import static dev.ledgerwing.core.power.Supplies.within;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.core.power.solar.DayBalance;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FlownDayTest {

    private static final SolarDay DAY =
            new SolarDay(null, 53.2, -6.8, LocalDate.of(2026, 6, 21), 1, 400, 15, 100, 90, null, 12, 100, null);
    private static final PowerSource CELLS = PowerSource.solar(
            "cells",
            "Cells",
            null,
            new SolarArray(
                    200.0, 30.0, 36.0, 7.0, -0.35, -0.3, 0, 0, false, SolarArray.Connection.TRACKER, 95.0, null));

    /** A main pack with cells and a motor; a second pack of 11.1 V and 111 Wh for the avionics, with a leg from the first or without. */
    private static DayBalance balance(double avionicsA, boolean hasSecondLeg, FeedElement... charging) {
        List<Feed> feeds = new ArrayList<>(List.of(
                feed("cells", "drive", charging),
                feed("main", "drive", fuse(50)),
                feed("second", "avionics", fuse(10), diode(0.4))));
        if (hasSecondLeg) {
            feeds.add(feed("drive", "avionics", linear(8, 0.5), diode(0.4)));
        }
        Power power = new Power(
                List.of(CELLS, pack("main", 6, 2), pack("second", 3, 2)),
                List.of(rail("drive", 22), rail("avionics", 11)),
                feeds,
                PowerRules.DEFAULT,
                DAY);
        Build build = Supplies.build(
                power,
                List.of(),
                part("motor", within(15, 30, constantCurrent("drive", 1, 2))),
                part("board", within(5, 15, constantCurrent("avionics", avionicsA, avionicsA))));
        return Objects.requireNonNull(PowerStatement.of(build).day());
    }

    /** Both packs hold 10 Ah: 222 Wh at 22.2 V and 111 Wh at 11.1 V. At 1 A the second would last 8 h, and nothing stands in. */
    @Test
    void endsWithAPackThatTheCellsDoNotCharge() {
        DayBalance balance = balance(1, false, fuse(20));

        assertThat(balance.missing()).isEmpty();
        assertThat(balance.isFlownThrough()).isFalse();
        assertThat(balance.uncharged()).singleElement().satisfies(pack -> {
            assertThat(pack.name()).isEqualTo("Pack second");
            assertThat(pack.lowHour()).isCloseTo(12 + 8, within(0.1));
        });
    }

    @Test
    void doesNotMindAPackThatLastsTheDay() {
        assertThat(balance(0.3, false, fuse(20)).uncharged()).isEmpty();
    }

    @Test
    void doesNotMindAPackThatAnotherStandsInFor() {
        assertThat(balance(1, true, fuse(20)).uncharged()).isEmpty();
    }

    /** By derivation: from full in the noon sun nothing is lost until dusk; the charge of the main pack alone counts. */
    @Test
    void countsOnlyThePackThatTheCellsCharge() {
        DayBalance balance = balance(0.3, false, fuse(20));
        double drawnWh = Objects.requireNonNull(balance.consumptionWh()) / 24;
        List<Double> percent = Objects.requireNonNull(balance.charge()).percent();

        // from 00:00 to 02:00 it is dark
        assertThat(percent.get(144) - percent.get(168)).isCloseTo(100 * 2 * drawnWh / 222, within(1e-6));
    }

    @Test
    void knowsNoHarvestThatDoesNotReachAPack() {
        DayBalance balance = balance(0.3, false, fuse(20), linear(20, 0.5));

        assertThat(balance.missing()).contains("cells that charge a pack");
        assertThat(balance.charge()).isNull();
    }

    /** A regulator of unknown efficiency draws more than anybody can say, and so does what is dark or has no nominal voltage. */
    @Test
    void doesNotKnowWhatIsDrawnThroughARegulatorOfUnknownEfficiency() {
        assertThat(drawn(85.0, "avionics").missing()).doesNotContain("what is drawn from the packs");
        assertThat(drawn(null, "avionics").missing()).contains("what is drawn from the packs");
        assertThat(drawn(85.0, "dark").missing()).contains("what is drawn from the packs");
    }

    private static DayBalance drawn(@Nullable Double efficiencyPercent, String cameraRail) {
        Regulator regulator = new Regulator(Regulator.Type.SWITCHING, 5.0, efficiencyPercent, 0.5, 6.0, 30.0, 0.0);
        Power power = new Power(
                List.of(CELLS, pack("main", 6, 2)),
                List.of(rail("drive", 22), rail("avionics", 5), rail("dark", 5)),
                List.of(
                        feed("cells", "drive", fuse(20)),
                        feed("main", "drive", fuse(50)),
                        feed("drive", "avionics", FeedElement.regulator("Regulator", 5.0, 5.0, regulator))),
                PowerRules.DEFAULT,
                DAY);
        Build build = Supplies.build(power, List.of(), part("camera", constantCurrent(cameraRail, 1, 1)));
        return Objects.requireNonNull(PowerStatement.of(build).day());
    }
}
