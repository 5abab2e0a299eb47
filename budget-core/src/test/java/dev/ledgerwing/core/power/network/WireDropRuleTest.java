package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.linear;
import static dev.ledgerwing.core.power.Supplies.load;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.rail;
import static dev.ledgerwing.core.power.Supplies.within;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class WireDropRuleTest {

    private static final Rail MAIN = rail("main", 5);

    private static Build one(FeedElement element, ElectricalLoad load) {
        return build(List.of(bench("b", 5)), List.of(MAIN), List.of(feed("b", "main", element)), part("L", load));
    }

    /** Of a main feed not over 2 % of the voltage: FAA AC 43.13-1B chapter 11. */
    @Test
    void wiresThatLoseMoreThanTheLimitBreak() {
        FeedElement wire = wire(60);
        ElectricalLoad load = constantCurrent("main", 2, 2);
        assertThat(Found.said(WireDropRule.DROP, Verdict.BREAKS, one(wire, load)))
                .isEqualTo("The wires on the way to “Rail main” lose 0.12 V, 2.4 % of its voltage; no more than 2 % is"
                        + " allowed.");
        Found.none(WireDropRule.DROP, one(wire(50), load));
    }

    @Test
    void wiresBeforeARegulatorAreNotCountedAgainstTheRailBehindIt() {
        Build build = build(
                List.of(bench("b", 12)),
                List.of(MAIN),
                List.of(feed("b", "main", wire(500), linear(5, 1), wire(10))),
                part("L", constantCurrent("main", 2, 2)));
        Found.none(WireDropRule.DROP, build);
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
        assertThat(Found.said(WireDropRule.DROP, Verdict.UNKNOWN, build)).contains("no nominal voltage", "0.02 V");
    }
}
