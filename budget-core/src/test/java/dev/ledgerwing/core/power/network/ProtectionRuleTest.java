package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.fuse;
import static dev.ledgerwing.core.power.Supplies.linear;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.rail;
import static dev.ledgerwing.core.power.Supplies.rated;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.build.WireRun.Routing;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

/** FAA AC 43.13-1B: paragraph 11-48, tables 11-3 and 11-9. */
class ProtectionRuleTest {

    private static FeedElement wire(int awg) {
        return FeedElement.wire("Wire of AWG " + awg, new WireRun(awg, Length.ofMm(100), 2, Routing.BUNDLE, 200.0));
    }

    private static Build with(FeedElement... elements) {
        return build(
                List.of(bench("b", 12)),
                List.of(rail("main", 5)),
                List.of(feed("b", "main", elements)),
                part("L", constantCurrent("main", 1, 1)));
    }

    /** AWG 20 in a bundle with insulation for 200 °C carries 9 A, and table 11-3 gives it a fuse of 5 A. */
    @Test
    void aFuseAboveTheWiresRatingBreaks() {
        assertThat(Found.said(ProtectionRule.WIRE, Verdict.BREAKS, with(fuse(10), wire(20))))
                .isEqualTo("“FUSE of 10.0 A” of 10 A lets more through than the 9 A that “Wire of AWG 20” behind it may"
                        + " carry.");
    }

    @Test
    void aFuseAboveTheTableIsTightAndOneWithinItFine() {
        assertThat(Found.said(ProtectionRule.WIRE, Verdict.TIGHT, with(fuse(7.5), wire(20))))
                .contains("more than the 5 A that FAA AC 43.13-1B Table 11-3 gives");
        Found.none(ProtectionRule.WIRE, with(fuse(5), wire(20)));
        Found.none(ProtectionRule.WIRE, with(rated(Kind.BREAKER, 7.5), wire(20)));
    }

    @Test
    void aWireBeforeTheFuseOrBehindAnotherOrBehindARegulatorIsNotItsOwn() {
        Found.none(ProtectionRule.WIRE, with(wire(20), fuse(50)));
        Found.none(ProtectionRule.WIRE, with(fuse(50), fuse(5), wire(20)));
        Found.none(ProtectionRule.WIRE, with(fuse(50), linear(5, 1), wire(20)));
    }

    @Test
    void aFuseProtectsTheWiresOfTheFeedsBehindItsRailToo() {
        Build build = build(
                List.of(bench("b", 12)),
                List.of(rail("main", 12), rail("more", 12)),
                List.of(feed("b", "main", fuse(30), wire(8)), feed("main", "more", wire(20))),
                part("L", constantCurrent("more", 1, 1)));
        assertThat(Found.only(ProtectionRule.WIRE, build))
                .extracting(Finding::subject)
                .isEqualTo("Wire of AWG 20");
    }
}
