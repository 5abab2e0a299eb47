package dev.ledgerwing.core.power.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Power;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.power.network.PowerNetwork;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** By derivation: 80 % of the capacity, less what is kept for the landing, over the current. */
class EnduranceTest {

    private static final List<Phase> CRUISE = List.of(Flights.stretching("cruise"));

    @Test
    void isTimeAtConstantLoadWhereNoPhasesAreRecorded() {
        Endurance endurance = endurance(onePack(List.of(), always("board", "main", 2.0)));
        assertThat(endurance.minutes()).isCloseTo(120 - 5, within(1e-9));
        assertThat(endurance.stretchMinutes()).isCloseTo(115, within(1e-9));
    }

    @Test
    void isTheSumOfThePhasesWhereNoneStretches() {
        Endurance endurance = endurance(onePack(
                List.of(Flights.fixed("climb", 10.0), Flights.fixed("glide", 20.0)), always("board", "main", 2.0)));
        assertThat(endurance.minutes()).isCloseTo(30, within(1e-9));
        assertThat(endurance.stretchMinutes()).isNull();
        assertThat(endurance.holdsFixedPhases()).isTrue();
    }

    @Test
    void isThatOfThePackThatIsSpentFirst() {
        Power power = Flights.power(
                List.of(Flights.pack("large", 10_000.0), Flights.pack("small", 1000.0)),
                List.of(Flights.rail("drive"), Flights.rail("main")),
                List.of(Flights.feed("large", "drive"), Flights.feed("small", "main")));
        Build build = Flights.build(power, CRUISE, always("motor", "drive", 10.0), always("board", "main", 1.0));
        Endurance endurance = endurance(build);
        assertThat(minutes(endurance)).containsExactly(48.0 - 5, 48.0 - 5);
        Endurance shorter =
                endurance(build.withSources(List.of(Flights.pack("large", 10_000.0), Flights.pack("small", 500.0))));
        assertThat(shorter.minutes()).isCloseTo(24 - 5, within(1e-9));
        assertThat(limiting(shorter)).isEqualTo("small");
    }

    @Test
    void isThatOfTheLongestAloneWherePacksStandInForEachOther() {
        Endurance endurance = endurance(twoPacks(Flights.redundantRail("main")));
        assertThat(minutes(endurance)).containsExactly(48.0 - 5, 96.0 - 5);
        assertThat(endurance.minutes()).isCloseTo(91, within(1e-9));
        assertThat(limiting(endurance)).isEqualTo("b");
    }

    /** 512 ways to feed nine rails from either pack: the one that would empty the smaller pack soonest may not be among those solved. */
    @Test
    void isNotKnownWhereThereAreMoreWaysToFeedTheRailsThanAreLookedAt() {
        assertThat(endurance(eachFromEitherPack(8)).missing()).isEmpty();
        Endurance endurance = endurance(eachFromEitherPack(9));
        assertThat(endurance.minutes()).isNull();
        assertThat(endurance.missing()).singleElement().asString().contains("fewer ways to feed the rails");
    }

    private static Build eachFromEitherPack(int rails) {
        List<String> codes = IntStream.range(0, rails).mapToObj(i -> "r" + i).toList();
        Power power = Flights.power(
                List.of(Flights.pack("a", 1000.0), Flights.pack("b", 2000.0)),
                codes.stream().map(Flights::rail).toList(),
                codes.stream()
                        .flatMap(rail -> Stream.of(Flights.feed("a", rail), Flights.feed("b", rail)))
                        .toList());
        return Flights.build(power, CRUISE, always("board", "r0", 1.0));
    }

    @Test
    void isThatOfTheOrdinaryCarrierWhereNothingSaysThatTheyStandIn() {
        Endurance endurance = endurance(twoPacks(Flights.rail("main")));
        assertThat(endurance.minutes()).isCloseTo(43, within(1e-9));
        assertThat(limiting(endurance)).isEqualTo("a");
    }

    /** Two redundant rails: a pack alone carries both, and is not spared one of them by the other. */
    @Test
    void asksAPackThatIsAloneForEveryRail() {
        Power power = Flights.power(
                List.of(Flights.pack("a", 2000.0), Flights.pack("b", 2000.0)),
                List.of(Flights.redundantRail("one"), Flights.redundantRail("two")),
                List.of(
                        Flights.feed("a", "one"),
                        Flights.feed("b", "one"),
                        Flights.feed("a", "two"),
                        Flights.feed("b", "two")));
        Build build = Flights.build(power, CRUISE, always("left", "one", 1.0), always("right", "two", 1.0));
        assertThat(endurance(build).minutes()).isCloseTo(48 - 5, within(1e-9));
    }

    @Test
    void doesNotCountAPackThatStaysAtHomeInAPhase() {
        Pack pack = Flights.pack("a", 1000.0).pack();
        assertThat(pack).isNotNull();
        PowerSource atHome = PowerSource.battery("a", "Pack a", "board", pack);
        Build build = twoPacks(Flights.rail("main")).withSources(List.of(atHome, Flights.pack("b", 2000.0)));
        LoadCase without = Ledgers.loadCase("bare", Purpose.FLIGHT, List.of("board"));
        Build bare = Ledgers.withCases(
                        build.withLines(List.of(always("board", "main", 5.0), always("more", "main", 1.0))), without)
                .withPhases(List.of(new Phase("cruise", "Cruise", null, true, "bare", List.of(), false)));
        assertThat(limiting(endurance(bare))).isEqualTo("b");
        assertThat(endurance(bare).minutes()).isCloseTo(96 - 5, within(1e-9));
    }

    /** Pack b could carry the climb, but is not there in the cruise: pack a must last for both. */
    @Test
    void letsAnotherPackCarryWhereTheOneThatStandsInStaysAtHome() {
        Pack pack = Flights.pack("b", 9000.0).pack();
        assertThat(pack).isNotNull();
        Build build = twoPacks(Flights.redundantRail("main"))
                .withLines(List.of(always("board", "main", 1.0), always("tray", "main", 0.0)))
                .withSources(List.of(Flights.pack("a", 1000.0), PowerSource.battery("b", "Pack b", "tray", pack)));
        Build bare = Ledgers.withCases(build, Ledgers.loadCase("bare", Purpose.FLIGHT, List.of("tray")))
                .withPhases(List.of(
                        Flights.fixed("climb", 6.0),
                        new Phase("cruise", "Cruise", null, true, "bare", List.of(), false)));
        assertThat(limiting(endurance(bare))).isEqualTo("a");
        assertThat(endurance(bare).minutes()).isCloseTo(48 - 5, within(1e-9));
    }

    @Test
    void isNotLimitedByASupplyFromOutside() {
        Build build = onePack(CRUISE, always("board", "main", 2.0))
                .withSources(List.of(PowerSource.external("one", "Bench", 11.1, 5.0)));
        assertThat(endurance(build).packs()).isEmpty();
        assertThat(endurance(build).minutes()).isNull();
    }

    @Test
    void isNotKnownWithoutTheCapacityOfThePack() {
        isMissing(
                Flights.onePack(Flights.pack("one", null), CRUISE, always("board", "main", 2.0)),
                "the capacity of “Pack one”");
    }

    @Test
    void isNotKnownWithoutTheShareThatMayBeUsed() {
        isMissing(
                Flights.onePack(Flights.pack("one", 5000.0, null), CRUISE, always("board", "main", 2.0)),
                "how much of “Pack one” may be used");
    }

    @Test
    void isNotKnownWithoutACurrent() {
        isMissing(
                onePack(CRUISE, always("board", "main", 2.0), always("lamp", "main", null)), "what “Part lamp” draws");
    }

    @Test
    void doesNotAskForACurrentThatNeverFlows() {
        PartLine off = Flights.load("lamp", "main", null, Map.of("cruise", 0.0));
        assertThat(endurance(onePack(CRUISE, always("board", "main", 2.0), off)).missing())
                .isEmpty();
    }

    @Test
    void isNotKnownWhileALoadHangsOnNoRail() {
        isMissing(
                onePack(CRUISE, always("board", "main", 2.0), always("lamp", null, 1.0)),
                "the rail that “Part lamp” hangs on");
    }

    @Test
    void isNotKnownWithoutTheLengthOfAFixedPhase() {
        isMissing(
                onePack(List.of(Flights.fixed("climb", null), CRUISE.get(0)), always("board", "main", 2.0)),
                "how long “Phase climb” lasts");
    }

    @Test
    void isNotKnownWithoutTheEfficiencyOfARegulator() {
        FeedElement regulator = FeedElement.regulator(
                "Regulator", 5.0, 5.0, new Regulator(Regulator.Type.SWITCHING, 5, null, 1.0, null, null, null));
        isMissing(
                onePack(CRUISE, always("board", "main", 2.0))
                        .withFeeds(List.of(Flights.feed("one", "main", regulator))),
                "the efficiency of “Regulator”");
    }

    @Test
    void isNotKnownWithoutTheVoltageThatWattsGoBy() {
        PartLine watts = Flights.drawing(
                "board", new ElectricalLoad("main", Draws.CONSTANT_POWER, 2.0, 2.0, null, null, Map.of(), null, null));
        isMissing(
                onePack(CRUISE, watts).withRails(List.of(new Rail("main", "Main", null, null, null, false))),
                "the nominal voltage of “Main”");
    }

    @Test
    void isNotKnownBehindALoop() {
        Build build = onePack(CRUISE, always("board", "main", 2.0))
                .withRails(List.of(Flights.rail("main"), Flights.rail("other")))
                .withFeeds(List.of(
                        Flights.feed("one", "main"), Flights.feed("main", "other"), Flights.feed("other", "main")));
        isMissing(build, "a way to “Rail main” that is no loop");
    }

    @Test
    void isNotKnownWhileARailIsDarkThatSomethingHangsOn() {
        Power power = Flights.power(
                List.of(Flights.pack("one", 5000.0)),
                List.of(Flights.rail("main"), Flights.rail("other")),
                List.of(Flights.feed("one", "main")));
        isMissing(
                Flights.build(power, CRUISE, always("board", "main", 2.0), always("lamp", "other", 1.0)),
                "what carries “Rail other”");
    }

    @Test
    void doesNotAskForACarrierOfARailThatNothingHangsOn() {
        Power power = Flights.power(
                List.of(Flights.pack("one", 5000.0)),
                List.of(Flights.rail("main"), Flights.rail("other")),
                List.of(Flights.feed("one", "main")));
        assertThat(endurance(Flights.build(power, CRUISE, always("board", "main", 2.0)))
                        .missing())
                .isEmpty();
    }

    private static void isMissing(Build build, String word) {
        Endurance endurance = endurance(build);
        assertThat(endurance.missing()).containsExactly(word);
        assertThat(endurance.minutes()).isNull();
        assertThat(endurance.holdsFixedPhases()).isFalse();
    }

    /** Of each pack, without the last digits. */
    private static List<Double> minutes(Endurance endurance) {
        return endurance.packs().stream()
                .map(PackEndurance::minutes)
                .map(minutes -> minutes == null ? Double.NaN : Math.rint(minutes * 1e6) / 1e6)
                .toList();
    }

    private static String limiting(Endurance endurance) {
        PackEndurance limiting = endurance.limiting();
        assertThat(limiting).isNotNull();
        return limiting.battery().code();
    }

    private static Endurance endurance(Build build) {
        return PowerEnergy.of(PowerNetwork.of(build)).endurance();
    }

    /** 1 Ah and 2 Ah on one rail, 1 A. */
    private static Build twoPacks(Rail rail) {
        Power power = Flights.power(
                List.of(Flights.pack("a", 1000.0), Flights.pack("b", 2000.0)),
                List.of(rail),
                List.of(Flights.feed("a", "main"), Flights.feed("b", "main")));
        return Flights.build(power, CRUISE, always("board", "main", 1.0));
    }

    /** 5 Ah. */
    private static Build onePack(List<Phase> phases, PartLine... loads) {
        return Flights.onePack(Flights.pack("one", 5000.0), phases, loads);
    }

    private static PartLine always(String id, @Nullable String rail, @Nullable Double typicalA) {
        return Flights.load(id, rail, typicalA, Map.of());
    }
}
