package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.load;
import static dev.ledgerwing.core.power.Supplies.pack;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.rail;
import static dev.ledgerwing.core.power.Supplies.redundant;
import static dev.ledgerwing.core.power.Supplies.resistance;
import static dev.ledgerwing.core.power.Supplies.within;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RailRuleTest {

    private static final Rail MAIN = rail("main", 5);

    private static Build one(FeedElement element, ElectricalLoad load) {
        return build(List.of(bench("b", 5)), List.of(MAIN), List.of(feed("b", "main", element)), part("L", load));
    }

    private static Build two(Rail rail, Feed first, Feed second, ElectricalLoad load) {
        return build(List.of(bench("a", 5), bench("b", 4.8)), List.of(rail), List.of(first, second), part("L", load));
    }

    @Test
    void aLoadThatGetsTooLittleAtItsPeakBreaks() {
        ElectricalLoad load = within(4.5, 5.5, constantCurrent("main", 1, 6));
        assertThat(Found.said(RailRule.LOW, Verdict.BREAKS, one(resistance(100), load)))
                .isEqualTo("“Part L” on “Rail main” gets down to 4.4 V, less than the 4.5 V it needs.");
        Found.none(RailRule.LOW, one(resistance(50), load));
    }

    @Test
    void aRailOutsideWhatItIsMeantForIsTightThoughItsLoadsBearIt() {
        Rail meant = new Rail("main", "Rail main", 5.0, 4.9, 5.1, false);
        ElectricalLoad load = within(4, 6, constantCurrent("main", 1, 2));
        Build low = build(
                List.of(bench("b", 5)), List.of(meant), List.of(feed("b", "main", resistance(100))), part("L", load));

        assertThat(Found.said(RailRule.OWN_LIMITS, Verdict.TIGHT, low))
                .isEqualTo("“Rail main” gets 4.8 V to 5 V, and is meant for 4.9 V to 5.1 V.");
        Found.none(RailRule.RAIL, low);
        Build within = build(
                List.of(bench("b", 5)), List.of(meant), List.of(feed("b", "main", resistance(50))), part("L", load));
        Found.none(RailRule.OWN_LIMITS, within);
        assertThat(Found.said(RailRule.RAIL, Verdict.HOLDS, within)).contains("stays at 4.9 V to 5 V");
        Build high = build(
                List.of(bench("b", 5.2)), List.of(meant), List.of(feed("b", "main", resistance(50))), part("L", load));
        assertThat(Found.said(RailRule.OWN_LIMITS, Verdict.TIGHT, high)).contains("5.2 V");
    }

    @Test
    void aLoadsOwnLeadsAreOnItsWay() {
        WireRun lead = new WireRun(26, Length.ofMm(1000), 3, WireRun.Routing.BUNDLE, 105.0);
        ElectricalLoad load =
                new ElectricalLoad("main", Draws.CONSTANT_CURRENT, 1.0, 2.0, 4.5, 5.5, Map.of(), null, lead);
        Build build = one(resistance(0), load);
        assertThat(Found.said(RailRule.LOW, Verdict.BREAKS, build)).contains("“Part L”");
        LoadState state = NetworkStatement.of(PowerNetwork.of(build)).loads().get(0);
        double ohmPerM = 0.133904 * (1 + 0.00393 * (PowerRules.WIRE_C - 20)); // AWG 26, from the table of gauges
        assertThat(state.lowestV()).isCloseTo(5 - 2 * 2 * ohmPerM, within(1e-4));
    }

    @Test
    void aLoadThatGetsTooMuchFromAFullPackBreaks() {
        Build build = build(
                List.of(pack("p", 2, 10)),
                List.of(MAIN),
                List.of(feed("p", "main")),
                part("L", within(5, 8, constantCurrent("main", 1, 1))));
        assertThat(Found.said(RailRule.HIGH, Verdict.BREAKS, build)).contains("up to 8.4 V", "the 8 V it bears");
        Found.none(RailRule.HIGH, build.withLines(List.of(part("L", within(5, 8.4, constantCurrent("main", 1, 1))))));
    }

    @Test
    void aRailThatStaysWithinItsLimitsIsFoundFine() {
        Build build = one(resistance(10), within(4.5, 5.5, constantCurrent("main", 1, 2)));
        assertThat(Found.said(RailRule.RAIL, Verdict.HOLDS, build)).contains("stays at 4.98 V to 5 V");
    }

    @Test
    void aRedundantRailThatOneFeedAloneDoesNotHoldBreaks() {
        ElectricalLoad load = within(4.5, 5.5, constantCurrent("main", 1, 1));
        Feed strong = feed("a", "main", diode(0.4));
        Feed weak = feed("b", "main", diode(0.4));
        Build build = two(redundant("main", 5, 4.5, 5.5), strong, weak, load);
        assertThat(Found.said(RailRule.ALONE, Verdict.BREAKS, build))
                .isEqualTo("With one feed alone, at worst “Feed b to main”, “Part L” on “Rail main” gets down to 4.4 V,"
                        + " less than the 4.5 V it needs.");
        Found.none(RailRule.LOW, build);
        assertThat(Found.said(RailRule.ALONE, Verdict.TIGHT, two(MAIN, strong, weak, load)))
                .contains("4.4 V");
        Found.none(
                RailRule.ALONE,
                two(redundant("main", 5, 4.4, 5.5), strong, weak, within(4.4, 5.5, constantCurrent("main", 1, 1))));
    }

    @Test
    void aRedundantRailWithOneFeedBreaks() {
        Build build = build(
                List.of(bench("a", 5)),
                List.of(redundant("main", 5, 4.5, 5.5)),
                List.of(feed("a", "main")),
                part("L", constantCurrent("main", 1, 1)));
        assertThat(Found.said(RailRule.ALONE, Verdict.BREAKS, build)).contains("only one ever gives it a voltage");
    }

    @Test
    void aLoadWithoutLimitsOnARailWithoutLimitsIsNotKnown() {
        Rail bare = new Rail("main", "Rail main", 5.0, null, null, false);
        ElectricalLoad load =
                new ElectricalLoad("main", Draws.CONSTANT_CURRENT, 1.0, 1.0, null, null, Map.of(), null, null);
        Build build = build(List.of(bench("b", 5)), List.of(bare), List.of(feed("b", "main")), part("L", load));
        assertThat(Found.said(RailRule.LIMITS, Verdict.UNKNOWN, build)).contains("Neither “Rail main” nor “Part L”");
        Found.none(RailRule.RAIL, build);
        Found.none(
                RailRule.LIMITS,
                build.withRails(List.of(MAIN))
                        .withLines(List.of(part("L", load("main", Draws.CONSTANT_CURRENT, 1.0, 1.0)))));
    }
}
