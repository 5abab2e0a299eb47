package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.diode;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.linear;
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
        assertThat(Found.said(RailRule.RAIL, Verdict.HOLDS, build)).contains("between 4.98 V and 5 V");
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
    void twoSuppliesTiedTogetherWithoutDiodesDragEachOtherDown() {
        ElectricalLoad load = constantCurrent("main", 1, 1);
        Feed open = feed("a", "main");
        Feed guarded = feed("b", "main", diode(0.3));
        assertThat(Found.said(RailRule.BACK, Verdict.TIGHT, two(MAIN, open, guarded, load)))
                .contains("“Feed a to main”");
        assertThat(Found.said(
                        RailRule.BACK, Verdict.BREAKS, two(redundant("main", 5, 0, 6), open, feed("b", "main"), load)))
                .contains("“Feed a to main” and “Feed b to main”");
        Found.none(RailRule.BACK, two(MAIN, feed("a", "main", diode(0.3)), guarded, load));
        Found.none(RailRule.BACK, two(MAIN, feed("a", "main", linear(4, 0.5)), guarded, load));
    }

    @Test
    void twoWaysFromOneSourceNeedNoDiodes() {
        Build build = build(
                List.of(bench("a", 5)),
                List.of(rail("one", 5), MAIN),
                List.of(feed("a", "one"), feed("a", "main"), feed("one", "main")),
                part("L", constantCurrent("main", 1, 1)));
        Found.none(RailRule.BACK, build);
    }

    /** Of a main feed not over 2 % of the voltage: FAA AC 43.13-1B chapter 11. */
    @Test
    void wiresThatLoseMoreThanTheLimitBreak() {
        FeedElement wire = wire(60);
        ElectricalLoad load = constantCurrent("main", 2, 2);
        assertThat(Found.said(RailRule.DROP, Verdict.BREAKS, one(wire, load)))
                .isEqualTo("The wires on the way to “Rail main” lose 0.12 V, 2.4 % of its voltage; no more than 2 % is"
                        + " allowed.");
        Found.none(RailRule.DROP, one(wire(50), load));
    }

    @Test
    void wiresBeforeARegulatorAreNotCountedAgainstTheRailBehindIt() {
        Build build = build(
                List.of(bench("b", 12)),
                List.of(MAIN),
                List.of(feed("b", "main", wire(500), linear(5, 1), wire(10))),
                part("L", constantCurrent("main", 2, 2)));
        Found.none(RailRule.DROP, build);
        assertThat(NetworkStatement.of(PowerNetwork.of(build)).rails().get(0).wireDropV())
                .isCloseTo(0.02, within(1e-9));
    }

    private static FeedElement wire(double milliohm) {
        return new FeedElement(
                "Wire",
                FeedElement.Kind.WIRE,
                1000.0,
                null,
                1,
                null,
                milliohm,
                null,
                null,
                new WireRun(16, Length.ofMm(300), 2, WireRun.Routing.FREE_AIR, null),
                null);
    }

    @Test
    void wiresToARailWithoutANominalVoltageAreNotKnown() {
        Build build = build(
                List.of(bench("b", 5)),
                List.of(new Rail("main", "Rail main", null, 4.0, 6.0, false)),
                List.of(feed("b", "main", wire(10))),
                part("L", constantCurrent("main", 2, 2)));
        assertThat(Found.said(RailRule.DROP, Verdict.UNKNOWN, build)).contains("no nominal voltage", "0.02 V");
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
