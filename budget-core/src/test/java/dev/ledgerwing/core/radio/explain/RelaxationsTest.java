package dev.ledgerwing.core.radio.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import dev.ledgerwing.core.radio.plan.ChannelPlanner;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RelaxationsTest {

    private static final Control TWO = Control.ofSwitch("left-toggle", "Left toggle", 2);
    private static final Control OTHER_TWO = Control.ofSwitch("right-toggle", "Right toggle", 2);

    /** Two functions of two states that are wanted in every combination in Transect, and one switch of two positions. */
    private static Squeeze everyCombination() {
        return Squeeze.ofChannels(1)
                .with(TWO)
                .with(Squeeze.phase("transect", "Transect"))
                .with(
                        Squeeze.asking(
                                Squeeze.mission("gear", "Gear", "down", "up"),
                                Map.of("transect", Demand.select("down", "up"))),
                        Squeeze.asking(
                                Squeeze.convenience("lights", "Lights", "off", "on"),
                                Map.of("transect", Demand.select("off", "on"))))
                .with(Squeeze.phase("arrival", "Arrival"))
                .with(Squeeze.asking(
                        Squeeze.mission("camera", "Camera", "off", "on"), Map.of("arrival", Demand.select("off"))));
    }

    @Test
    void offersNothingWhereEverythingFits() {
        Relaxations relaxations = Relaxations.of(Squeeze.ofChannels(1)
                .with(TWO)
                .with(Squeeze.mission("gear", "Gear", "down", "up"))
                .problem());

        assertThat(relaxations.all()).isEmpty();
        assertThat(relaxations.noneSuffices()).isFalse();
    }

    /**
     * Common practice, no source: a gear and a charging switch can share two positions exactly when “gear up, charging off” is
     * never needed.
     */
    @Test
    void givesUpChargingOffWithTheGearUp() {
        Relaxations relaxations = Relaxations.of(gearAndChargingOnTwo());

        Relaxation offered =
                relaxations.byKey("give-up:gear=up,charging=off@transect").orElseThrow();
        assertThat(offered.kind()).isEqualTo(Relaxation.Kind.GIVE_UP);
        assertThat(offered.what()).isEqualTo("Give up Gear up and Charging off in Transect.");
        assertThat(offered.loses()).isEqualTo("In Transect nobody can have Gear up and Charging off at the same time.");
        assertThat(offered.caution()).isNull();
    }

    private static ChannelProblem gearAndChargingOnTwo() {
        return Squeeze.ofChannels(1)
                .with(TWO)
                .with(Squeeze.phase("transect", "Transect"), Squeeze.phase("arrival", "Arrival"))
                .with(
                        Squeeze.asking(
                                Squeeze.mission("gear", "Gear", "down", "up"),
                                Map.of("transect", Demand.select("up"), "arrival", Demand.select("down"))),
                        Squeeze.asking(
                                Squeeze.mission("charging", "Charging", "off", "on"),
                                Map.of("transect", Demand.select("off", "on"), "arrival", Demand.select("off"))))
                .problem();
    }

    @Test
    void recordsWhoGaveItUpAndWhy() {
        Build before = Squeeze.build(gearAndChargingOnTwo());
        Build after =
                offered(before, "give-up:gear=up,charging=off@transect").accept(before, "R. Heath", "we land first");

        assertThat(after.radio().notNeeded())
                .containsExactly(new NotNeeded(
                        "N1",
                        List.of("transect"),
                        List.of(new FunctionState("gear", "up"), new FunctionState("charging", "off")),
                        "R. Heath",
                        "we land first"));
        assertThat(ChannelPlanner.fits(ChannelProblem.of(after))).isTrue();
    }

    @Test
    void givesAFreshIdToWhatIsGivenUp() {
        ChannelProblem problem = gearAndChargingOnTwo();
        NotNeeded old = new NotNeeded(
                "N2",
                List.of("arrival"),
                List.of(new FunctionState("gear", "up"), new FunctionState("charging", "on")),
                "somebody",
                "long ago");
        Build before = Squeeze.build(problem).withNotNeeded(List.of(old));

        assertThat(offered(before, "give-up:gear=up,charging=off@transect")
                        .accept(before, "R. Heath", "we land first")
                        .radio()
                        .notNeeded())
                .extracting(NotNeeded::id)
                .containsExactly("N2", "N3");
    }

    @Test
    void findsTheFewestPositionsThatDo() {
        Build before = Squeeze.build(gearAndChargingOnTwo());
        Relaxation offered = offered(before, "more-positions:left-toggle=3");

        assertThat(offered.what()).isEqualTo("Fit a switch with 3 positions as Left toggle.");
        assertThat(offered.loses())
                .isEqualTo("Nothing in flight; Left toggle has 2 positions now, so the switch is replaced.");
        assertThat(offered.accept(before, "R. Heath", "spare in the drawer")
                        .radio()
                        .controls())
                .containsExactly(TWO.withPositions(3));
    }

    @Test
    void growsWhatMixesTheSwitch() {
        Control mixed = new Control("both", "Both", Control.Kind.MIXED, 4, List.of("left-toggle", "right-toggle"));
        MorePositions more = new MorePositions(TWO, 3);
        ChannelProblem problem =
                Squeeze.ofChannels(1).with(TWO, OTHER_TWO, mixed).problem();

        assertThat(more.in(problem.radio(), "R. Heath", "more room").controls())
                .containsExactly(TWO.withPositions(3), OTHER_TWO, mixed.withPositions(6));
    }

    @Test
    void mixesTwoSwitchesOntoOneChannel() {
        ChannelProblem problem = gearAndChargingOnTwo();
        Build before = Squeeze.build(problem).withControls(List.of(TWO, OTHER_TWO));
        Relaxation offered = offered(before, "mix:left-toggle+right-toggle");
        Build after = offered.accept(before, "R. Heath", "no other switch");

        assertThat(offered.what()).isEqualTo("Mix Left toggle and Right toggle onto one channel with 4 levels.");
        assertThat(offered.loses())
                .isEqualTo("Neither Left toggle nor Right toggle can drive a channel by itself any more, and a function"
                        + " hangs on both of them.");
        assertThat(after.radio().controls())
                .containsExactly(
                        TWO,
                        OTHER_TWO,
                        new Control(
                                "left-toggle-right-toggle",
                                "Left toggle and Right toggle",
                                Control.Kind.MIXED,
                                4,
                                List.of("left-toggle", "right-toggle")));
        assertThat(ChannelPlanner.fits(ChannelProblem.of(after))).isTrue();
    }

    @Test
    void findsAFreeCodeForAMix() {
        Control taken = Control.of("left-toggle-right-toggle", "Slide", Control.Kind.SLIDER);
        ChannelProblem problem =
                Squeeze.ofChannels(1).with(TWO, OTHER_TWO, taken).problem();

        assertThat(new Mix(TWO, OTHER_TWO)
                        .in(problem.radio(), "R. Heath", "room")
                        .controls())
                .last()
                .extracting(Control::code)
                .isEqualTo("left-toggle-right-toggle-2");
    }

    @Test
    void mixesNoSwitchThatDrivesAPinnedChannel() {
        Squeeze squeeze = Squeeze.ofChannels(2)
                .with(TWO, OTHER_TWO)
                .with(Squeeze.phase("transect", "Transect"))
                .with(
                        Squeeze.mission("horn", "Horn", "off", "on"),
                        Squeeze.asking(
                                Squeeze.mission("flaps", "Flaps", "up", "half", "full"),
                                Map.of("transect", Demand.select("up", "half", "full"))));
        Channel pinned = new Channel(1, "right-toggle", true, List.of(new Carried("horn", List.of("off", "on"), null)));

        assertThat(Relaxations.of(squeeze.problem(pinned)).all())
                .extracting(Relaxation::kind)
                .contains(Relaxation.Kind.MORE_POSITIONS)
                .doesNotContain(Relaxation.Kind.MIX);
    }

    @Test
    void takesAFunctionOffTheRadio() {
        Squeeze squeeze = everyCombination();
        Build before = Squeeze.build(squeeze.problem(new Channel(
                1,
                "left-toggle",
                false,
                List.of(
                        new Carried("gear", List.of("down", "up"), null),
                        new Carried("lights", List.of("off", "on"), null)))));
        Relaxation offered = offered(before, "off-the-radio:lights=data-link");
        Build after = offered.accept(before, "R. Heath", "seldom used");

        assertThat(offered.what()).isEqualTo("Command Lights by the data link.");
        assertThat(offered.loses()).isEqualTo("Lights can no longer be reached when the data link is out of range.");
        assertThat(after.radio().functions())
                .filteredOn(each -> !each.needsChannel())
                .extracting(RadioFunction::code, RadioFunction::otherwiseBy)
                .containsExactly(tuple("lights", OtherwiseBy.DATA_LINK));
        assertThat(after.radio().channels())
                .singleElement()
                .satisfies(channel -> assertThat(channel.functions()).containsExactly("gear"));
        assertThat(offered(before, "off-the-radio:lights=on-board").loses())
                .isEqualTo("Nobody can command Lights by hand any more.");
    }

    @Test
    void namesFlightFunctionsOnlyWithACautionAndIrreversibleOnesNever() {
        RadioFunction release = new RadioFunction(
                "release",
                "Release",
                RadioFunction.Kind.SWITCHED,
                List.of("held", "released"),
                RadioFunction.Criticality.MISSION,
                true);
        Relaxations relaxations = Relaxations.of(Squeeze.ofChannels(1)
                .with(TWO, OTHER_TWO)
                .with(Squeeze.flight("behaviour", "Flight behaviour", "by hand", "held level"), release)
                .problem());

        assertThat(relaxations.all())
                .extracting(Relaxation::key, Relaxation::caution)
                .containsExactly(
                        tuple("off-the-radio:behaviour=data-link", CAUTION),
                        tuple("off-the-radio:behaviour=on-board", CAUTION));
    }

    private static final String CAUTION =
            "The flight itself hangs on Flight behaviour: the other path has to be proven first.";

    @Test
    void saysThatNoneSuffices() {
        Relaxations relaxations = Relaxations.of(Squeeze.ofChannels(1)
                .with(Squeeze.stick("one"), Squeeze.stick("two"), Squeeze.stick("three"))
                .with(
                        Squeeze.proportional("aileron", "Aileron"),
                        Squeeze.proportional("elevator", "Elevator"),
                        Squeeze.proportional("throttle", "Throttle"))
                .problem());

        assertThat(relaxations.all()).isEmpty();
        assertThat(relaxations.noneSuffices()).isTrue();
    }

    @Test
    void putsFirstWhatTakesLeast() {
        assertThat(Relaxations.of(everyCombination().problem()).all())
                .extracting(Relaxation::key)
                .containsExactly(
                        "more-positions:left-toggle=4",
                        "off-the-radio:lights=data-link",
                        "off-the-radio:lights=on-board",
                        "off-the-radio:gear=data-link",
                        "off-the-radio:gear=on-board");
    }

    private static Relaxation offered(Build build, String key) {
        return Relaxations.of(ChannelProblem.of(build)).byKey(key).orElseThrow();
    }

    @Test
    void aRadioTooLargeToSearchIsNotDecided() {
        ChannelProblem problem = SeededSqueezes.crowded(40, 30);

        Explanation explanation = Explanation.of(problem);
        Relaxations relaxations = Relaxations.of(problem);

        assertThat(explanation.reasons())
                .extracting(Reason::sentence)
                .containsExactly(
                        "All 40 functions together do not fit; there are too many combinations to tell which of them are in the way.");
        assertThat(relaxations.all()).isEmpty();
        assertThat(relaxations.noneSuffices()).isFalse();
        assertThat(relaxations.undecided()).isTrue();
    }
}
