package dev.ledgerwing.core.power.network;

import static dev.ledgerwing.core.power.Supplies.bench;
import static dev.ledgerwing.core.power.Supplies.build;
import static dev.ledgerwing.core.power.Supplies.constantCurrent;
import static dev.ledgerwing.core.power.Supplies.constantPower;
import static dev.ledgerwing.core.power.Supplies.feed;
import static dev.ledgerwing.core.power.Supplies.fuse;
import static dev.ledgerwing.core.power.Supplies.inGroup;
import static dev.ledgerwing.core.power.Supplies.linear;
import static dev.ledgerwing.core.power.Supplies.packOf;
import static dev.ledgerwing.core.power.Supplies.part;
import static dev.ledgerwing.core.power.Supplies.phase;
import static dev.ledgerwing.core.power.Supplies.rail;
import static dev.ledgerwing.core.power.Supplies.rated;
import static dev.ledgerwing.core.power.Supplies.resistance;
import static dev.ledgerwing.core.power.Supplies.running;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.build.FeedElement.SwitchedLoad;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CurrentRuleTest {

    private static Build with(PowerSource source, FeedElement element, PartLine... lines) {
        return build(List.of(source), List.of(rail("main", 12)), List.of(feed(source.code(), "main", element)), lines);
    }

    private static Build drawing(double typicalA, double peakA, FeedElement element) {
        return with(bench("b", 12), element, part("L", constantCurrent("main", typicalA, peakA)));
    }

    private static ElementLoad only(Build build) {
        return NetworkStatement.of(PowerNetwork.of(build)).elements().get(0);
    }

    @Test
    void anElementWithinItsReserveIsFoundFineOnce() {
        Build build = drawing(7, 8, fuse(10));
        Found.none(CurrentRule.ELEMENT, build);
        assertThat(Found.said(CurrentRule.CARRIES, Verdict.HOLDS, build)).contains("“FUSE of 10.0 A”", "at 80 %");
    }

    @Test
    void anElementShortOfItsReserveIsTight() {
        Build build = drawing(7, 8.5, fuse(10));
        assertThat(Found.said(CurrentRule.ELEMENT, Verdict.TIGHT, build))
                .isEqualTo("“FUSE of 10.0 A” in “Feed b to main” carries peaks of 8.5 A (all the time, packs full),"
                        + " 85 % of 10 A: short of the wanted reserve of 20 %.");
        Found.none(CurrentRule.CARRIES, build);
    }

    @Test
    void anElementAboveItsRatingBreaks() {
        Build build = drawing(11, 11, fuse(10));
        assertThat(Found.said(CurrentRule.ELEMENT, Verdict.BREAKS, build)).contains("more than the 10 A it may: 110 %");
        assertThat(only(build).marginPercent()).isCloseTo(-10, within(1e-9));
    }

    @Test
    void anElementWithoutARatingIsNotKnown() {
        FeedElement unrated = FeedElement.rated("Main plug", Kind.CONNECTOR, null);
        assertThat(Found.said(CurrentRule.ELEMENT, Verdict.UNKNOWN, drawing(1, 2, unrated)))
                .isEqualTo(
                        "“Main plug” in “Feed b to main” carries 1 A (all the time, packs full), and no rating is recorded.");
    }

    @Test
    void theReserveOfAKindIsTheTeamsOwn() {
        PowerRules rules =
                new PowerRules(null, null, null, 0.0, null, null, null, null, null, null, null, null, null, null, null);
        Build build = drawing(9, 10, fuse(10)).withPowerRules(rules);
        Found.none(CurrentRule.ELEMENT, build);
    }

    /** Common practice, no source: at or below half of its rating at full power a motor controller is comfortable. */
    @ParameterizedTest
    @CsvSource({"20, HOLDS", "20.1, TIGHT", "40, TIGHT", "40.1, BREAKS"})
    void aMotorControllerIsComfortableUpToHalfOfItsRating(double amperes, Verdict verdict) {
        assertThat(only(drawing(amperes, amperes, rated(Kind.MOTOR_CONTROLLER, 40)))
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void aWireIsHeldAgainstItsSteadyCurrentUnlessItSaysWhatItBearsForMoments() {
        WireRun run = Builds.wire(20, 100, 2); // 4 A in a bundle, 105 °C: FAA AC 43.13-1B Table 11-9
        ElementLoad wire = only(drawing(3, 30, FeedElement.wire("Leads", run)));

        assertThat(wire.loadPercent()).isCloseTo(75, within(1e-9));
        assertThat(wire.isPeakWorse()).isFalse();
        assertThat(wire.verdict()).isEqualTo(Verdict.HOLDS);

        FeedElement stated = new FeedElement("Leads", Kind.WIRE, null, 25.0, 1, null, null, null, null, run, null);
        assertThat(only(drawing(3, 30, stated)).verdict()).isEqualTo(Verdict.BREAKS);
    }

    @Test
    void peaksAreHeldAgainstAPeakRatingOfTheirOwn() {
        FeedElement regulator = new FeedElement("Fuse", Kind.FUSE, 5.0, 10.0, 1, null, 0.0, null, null, null, null);
        assertThat(only(drawing(3, 8, regulator)).loadPercent()).isCloseTo(80, within(1e-9));
        assertThat(only(drawing(4.5, 5, regulator)).loadPercent()).isCloseTo(90, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "FUSE, JOINED, 2, 10", "DIODE, JOINED, 2, 10", "REGULATOR, JOINED, 2, 10", "CONNECTOR, JOINED, 2, 7.5",
        "CONNECTOR, JOINED, 1, 10", "SWITCH, JOINED, 3, 5", "CONNECTOR, JOINED, 6, 2.5", "FUSE, OWN_BRANCH, 2, 5"
    })
    void whatLiesSideBySideIsJudgedByItsKind(Kind kind, Sharing sharing, int count, double ofOneA) {
        FeedElement element = new FeedElement(
                "Element",
                kind,
                100.0,
                null,
                count,
                sharing,
                0.0,
                kind == Kind.DIODE ? 0.0 : null,
                kind == Kind.SWITCH ? SwitchedLoad.RESISTIVE : null,
                null,
                kind == Kind.REGULATOR ? linear(10, 1).regulator() : null);
        assertThat(only(drawing(10, 10, element)).continuousA()).isCloseTo(ofOneA, within(1e-9));
    }

    /** FAA AC 43.13-1B table 11-4, note 1 on its own numbers: a motor of 5 A at 28 V needs a switch of 15 A. */
    @ParameterizedTest
    @CsvSource({
        "28, MOTOR, 15, 5",
        "12, LAMP, 20, 4",
        "28, RESISTIVE, 10, 5",
        "28, INDUCTIVE, 8, 2",
        "12, MOTOR, 4, 2",
        "12, RESISTIVE, 3, 3",
        "12, INDUCTIVE, 6, 3",
        "28, LAMP, 8, 1"
    })
    void aSwitchIsWorthLessByWhatItSwitches(double volts, SwitchedLoad switched, double ratingA, double usableA) {
        Build build = with(bench("b", volts), switchOf(ratingA, switched), part("L", constantCurrent("main", 1, 1)));
        assertThat(only(build).rating().continuousA()).isCloseTo(usableA, within(1e-9));
    }

    @Test
    void aSwitchThatNobodySaysWhatItSwitchesIsNotKnown() {
        Build build = drawing(1, 1, switchOf(10, null));
        assertThat(Found.said(CurrentRule.ELEMENT, Verdict.UNKNOWN, build)).contains("not recorded what it switches");
    }

    private static FeedElement switchOf(double ratingA, @Nullable SwitchedLoad switched) {
        return new FeedElement("Switch", Kind.SWITCH, ratingA, null, 1, null, 0.0, null, switched, null, null);
    }

    @Test
    void aPackAboveItsBurstBreaksAndOneShortOfItsReserveIsTight() {
        PartLine load = part("L", constantCurrent("main", 85, 150));
        Build burst = with(packOf("p", 3, 0.0, 10.0, 14.0), fuse(1000), load);
        assertThat(Found.said(CurrentRule.SOURCE, Verdict.BREAKS, burst))
                .contains("“Pack p” gives peaks of 150 A", "140 A");
        Build tight = with(packOf("p", 3, 0.0, 10.0, 20.0), fuse(1000), load);
        assertThat(Found.said(CurrentRule.SOURCE, Verdict.TIGHT, tight)).contains("gives 85 A", "85 % of 100 A");
        Found.none(CurrentRule.SOURCE, with(packOf("p", 3, 0.0, 20.0, 20.0), fuse(1000), load));
    }

    @Test
    void aPackWithoutABurstIsJudgedByItsContinuousCurrentAndNotKnownBeyond() {
        Found.none(
                CurrentRule.SOURCE,
                with(packOf("p", 3, 0.0, 10.0, null), fuse(1000), part("L", constantCurrent("main", 50, 80))));
        assertThat(Found.said(
                        CurrentRule.SOURCE,
                        Verdict.UNKNOWN,
                        with(packOf("p", 3, 0.0, 10.0, null), fuse(1000), part("L", constantCurrent("main", 50, 120)))))
                .contains("what it may give for moments is not recorded");
        assertThat(Found.said(
                        CurrentRule.SOURCE,
                        Verdict.UNKNOWN,
                        with(packOf("p", 3, 0.0, null, null), fuse(1000), part("L", constantCurrent("main", 1, 1)))))
                .contains("what it may give is not recorded");
    }

    /** By derivation: 10 V behind 1 ohm give at most V^2/(4R) = 25 W. */
    @Test
    void aSupplyThatCannotGiveThePowerCollapses() {
        Build build = build(
                List.of(bench("b", 10)),
                List.of(rail("main", 10)),
                List.of(feed("b", "main", resistance(1000))),
                part("L", constantPower("main", 2.4, 2.6)));
        assertThat(Found.said(CurrentRule.COLLAPSE, Verdict.BREAKS, build))
                .contains("“Bench b” cannot give", "at peak load", "all the time");
        Found.none(CurrentRule.COLLAPSE, build.withLines(List.of(part("L", constantPower("main", 2.4, 2.499)))));
    }

    @Test
    void loadsOfOneGroupDoNotPeakTogether() {
        Build build = with(
                bench("b", 12),
                fuse(10),
                part("A", inGroup("gear", constantCurrent("main", 1, 4))),
                part("B", inGroup("gear", constantCurrent("main", 2, 6))),
                part("C", constantCurrent("main", 0.5, 1)));
        assertThat(only(build).peakA()).isCloseTo(1 + 6 + 1, within(1e-9));
    }

    @Test
    void aLoadThatRestsInAPhaseDrawsNothingThereAndItsWholeTypicalWhereItRunsAtAll() {
        PartLine load = part("L", running(Map.of("one", 0.0, "two", 0.1), constantCurrent("main", 4, 6)));
        Build build = build(
                new Power(
                        List.of(bench("b", 12)),
                        List.of(rail("main", 12)),
                        List.of(feed("b", "main", fuse(10))),
                        PowerRules.DEFAULT,
                        null),
                List.of(phase("one"), phase("two")),
                load);
        PowerNetwork network = PowerNetwork.of(build);
        assertThat(amperes(network, 0, LoadLevel.PEAK)).isZero();
        assertThat(amperes(network, 1, LoadLevel.ENERGY)).isCloseTo(0.4, within(1e-12));
        assertThat(amperes(network, 1, LoadLevel.CONTINUOUS)).isEqualTo(4);
        assertThat(amperes(network, 1, LoadLevel.PEAK)).isEqualTo(6);
    }

    private static double amperes(PowerNetwork network, int occasion, LoadLevel level) {
        return network.on(network.occasions().get(occasion))
                .normal(Charge.FULL, level)
                .amperes("main");
    }
}
