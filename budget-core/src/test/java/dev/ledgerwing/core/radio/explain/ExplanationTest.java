package dev.ledgerwing.core.radio.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ExplanationTest {

    private static final Control SWITCH_2 = Control.ofSwitch("left-toggle", "Left toggle", 2);
    private static final Control SWITCH_3 = Control.ofSwitch("right-toggle", "Right toggle", 3);

    /**
     * Common practice, no source: on six channels the four primary controls and the switch for the flight behaviour leave one,
     * and gear and charging can share two positions exactly when “gear up, charging off” is never needed.
     */
    @Test
    void sixChannelsLeaveOneForEverythingElse() {
        assertThat(sentences(Squeeze.gearAndCharging().problem()))
                .containsExactly(
                        "Aileron, Elevator, Rudder, Throttle and Flight behaviour take 5 of 6 channels.",
                        "Gear and Charging would have to share the 1 channel left; no control has more than 2 positions.",
                        "In Transect, Gear must be selectable up, and Charging must be selectable off and on.",
                        "In Arrival, Gear must be selectable down.");
    }

    @Test
    void fitsWithoutAWordWhenNothingIsInTheWay() {
        Squeeze room = Squeeze.ofChannels(1).with(SWITCH_2).with(Squeeze.mission("gear", "Gear", "down", "up"));

        assertThat(Explanation.of(room.problem()).reasons()).isEmpty();
    }

    @Test
    void saysNothingOfWhatIsNotKnown() {
        Squeeze room = Squeeze.ofChannels(1).with(Squeeze.mission("gear", "Gear", "down", "up"));

        assertThat(Explanation.of(room.problem()).reasons()).isEmpty();
    }

    @Test
    void namesALimitOfASingleStateAsStaying() {
        Squeeze squeeze = Squeeze.ofChannels(1)
                .with(SWITCH_2)
                .with(Squeeze.phase("transect", "Transect"), Squeeze.phase("arrival", "Arrival"))
                .with(
                        Squeeze.asking(
                                Squeeze.mission("charging", "Charging", "off", "on"),
                                Map.of("transect", Demand.select("off", "on"))),
                        Squeeze.asking(
                                Squeeze.mission("gear", "Gear", "down", "up"),
                                Map.of(
                                        "transect",
                                        new Demand(List.of(), List.of("up")),
                                        "arrival",
                                        Demand.select("down"))));

        assertThat(sentences(squeeze.problem()))
                .containsExactly(
                        "Charging and Gear would have to share the 1 channel there is; no control has more than 2"
                                + " positions.",
                        "In Transect, Charging must be selectable off and on, and Gear must stay up.",
                        "In Arrival, Gear must be selectable down.");
    }

    @Test
    void countsFunctionsThatNeedAChannelEach() {
        Squeeze squeeze = Squeeze.ofChannels(2)
                .with(Squeeze.stick("one"), Squeeze.stick("two"), Squeeze.stick("three"))
                .with(
                        Squeeze.proportional("aileron", "Aileron"),
                        Squeeze.proportional("elevator", "Elevator"),
                        Squeeze.proportional("throttle", "Throttle"));

        assertThat(Explanation.of(squeeze.problem()).reasons()).singleElement().satisfies(reason -> {
            assertThat(reason.kind()).isEqualTo(Reason.Kind.OWN_CHANNELS);
            assertThat(reason.sentence())
                    .isEqualTo("Aileron, Elevator and Throttle must have a channel each; there are only 2.");
            assertThat(reason.causes()).extracting(Cause::code).containsExactly("aileron", "elevator", "throttle");
        });
    }

    @Test
    void countsFunctionsThatNeedAStickEach() {
        Squeeze squeeze = Squeeze.ofChannels(6)
                .with(Squeeze.stick("one"))
                .with(
                        Squeeze.proportional("aileron", "Aileron"),
                        Squeeze.proportional("elevator", "Elevator"),
                        Squeeze.proportional("throttle", "Throttle"));

        assertThat(sentences(squeeze.problem()))
                .containsExactly("Aileron and Elevator must have a stick or a slider each; there is only 1.");
    }

    @Test
    void countsFunctionsThatNeedASwitchEach() {
        Squeeze squeeze = Squeeze.ofChannels(6)
                .with(SWITCH_2)
                .with(
                        Squeeze.flight("behaviour", "Flight behaviour", "by hand", "held level"),
                        Squeeze.flight("arming", "Arming", "safe", "armed"));

        assertThat(sentences(squeeze.problem()))
                .containsExactly("Flight behaviour and Arming must have a switch each; there is only 1.");
    }

    @Test
    void tellsWhenTheSwitchesAreShortAndNotTheChannels() {
        Squeeze squeeze = Squeeze.ofChannels(6)
                .with(SWITCH_2, Control.ofSwitch("front-toggle", "Front toggle", 2))
                .with(Squeeze.phase("transect", "Transect"))
                .with(
                        Squeeze.flight("behaviour", "Flight behaviour", "by hand", "held level"),
                        Squeeze.asking(
                                Squeeze.mission("gear", "Gear", "down", "up"),
                                Map.of("transect", Demand.select("down", "up"))),
                        Squeeze.asking(
                                Squeeze.mission("charging", "Charging", "off", "on"),
                                Map.of("transect", Demand.select("off", "on"))));

        assertThat(sentences(squeeze.problem()))
                .startsWith(
                        "1 of 2 switches is taken by Flight behaviour.",
                        "Gear and Charging would have to share the 1 switch left; no control has more than 2 positions.");
    }

    @Test
    void tellsThatNoControlHasEnoughPositions() {
        Squeeze squeeze = Squeeze.ofChannels(6)
                .with(SWITCH_2)
                .with(Squeeze.phase("transect", "Transect"))
                .with(Squeeze.asking(
                        Squeeze.mission("flaps", "Flaps", "up", "half", "full"),
                        Map.of("transect", Demand.select("up", "half", "full"))));

        assertThat(sentences(squeeze.problem()))
                .containsExactly(
                        "No control that is there can do what is asked of Flaps; none has more than 2 positions.",
                        "In Transect, Flaps must be selectable up, half and full.");
    }

    /** By derivation: one 1 among three states, each in its turn, flips some decoder twice in every order. */
    @Test
    void tellsOfDecodersThatChangeOnlyOnce() {
        Squeeze squeeze = Squeeze.ofChannels(1)
                .with(SWITCH_3)
                .with(Squeeze.phase("one", "One"), Squeeze.phase("two", "Two"), Squeeze.phase("three", "Three"))
                .with(inTurn("first", "one"), inTurn("second", "two"), inTurn("third", "three"));

        List<String> sentences = sentences(squeeze.problem());

        assertThat(sentences).contains("Along the pulse First can change only once.");
        assertThat(sentences)
                .filteredOn(each -> each.endsWith("can change only once."))
                .hasSize(3);
    }

    private static RadioFunction inTurn(String code, String itsPhase) {
        Map<String, Demand> demands = new TreeMap<>();
        List.of("one", "two", "three")
                .forEach(phase -> demands.put(phase, Demand.select(phase.equals(itsPhase) ? "on" : "off")));
        String name = code.substring(0, 1).toUpperCase(Locale.ROOT) + code.substring(1);
        return Squeeze.asking(
                Squeeze.with(Squeeze.mission(code, name, "off", "on"), null, DecodedBy.ONE_STEP), demands);
    }

    /** By derivation: two decoders that change once pass three of the four combinations, never all. */
    @Test
    void tellsOfThePresetsForTheLossOfTheSignal() {
        Squeeze squeeze = Squeeze.ofChannels(1)
                .with(new RadioLink(1, RadioLink.OnLoss.PRESET, RadioLink.ActsOnLoss.RECEIVER, null, null))
                .with(SWITCH_3)
                .with(Squeeze.phase("one", "One"), Squeeze.phase("two", "Two"), Squeeze.phase("three", "Three"))
                .with(
                        wanted(
                                Squeeze.mission("gear", "Gear", "down", "up"),
                                "up",
                                Map.of(
                                        "one", Demand.select("down"),
                                        "two", Demand.select("down"),
                                        "three", Demand.select("up"))),
                        wanted(
                                Squeeze.mission("charging", "Charging", "off", "on"),
                                "off",
                                Map.of(
                                        "one", Demand.select("off"),
                                        "two", Demand.select("on"),
                                        "three", Demand.select("on"))));

        assertThat(sentences(squeeze.problem()))
                .endsWith(
                        "Along the pulse Gear can change only once.",
                        "Along the pulse Charging can change only once.",
                        "When the signal is lost, Gear up and Charging off are wanted.");
    }

    @Test
    void tellsWhatAReceiverThatHoldsMayLeaveAFunctionIn() {
        Squeeze squeeze = Squeeze.ofChannels(1)
                .with(new RadioLink(1, RadioLink.OnLoss.HOLD, RadioLink.ActsOnLoss.RECEIVER, null, null))
                .with(SWITCH_2)
                .with(Squeeze.phase("transect", "Transect"), Squeeze.phase("arrival", "Arrival"))
                .with(
                        Squeeze.asking(
                                Squeeze.mission("gear", "Gear", "down", "up"),
                                Map.of("transect", Demand.select("down", "up"))),
                        wanted(
                                Squeeze.mission("lights", "Lights", "off", "on"),
                                "on",
                                Map.of("arrival", Demand.select("off"))));

        assertThat(sentences(squeeze.problem())).endsWith("When the signal is lost, Lights on is wanted.");
    }

    private static RadioFunction wanted(RadioFunction function, String onLoss, Map<String, Demand> demands) {
        return Squeeze.asking(
                Squeeze.with(function, onLoss, function.code().equals("lights") ? DecodedBy.TABLE : DecodedBy.ONE_STEP),
                demands);
    }

    @Test
    void tellsOfAPin() {
        Squeeze squeeze = Squeeze.ofChannels(1)
                .with(SWITCH_2)
                .with(Squeeze.mission("gear", "Gear", "down", "up"), Squeeze.mission("lights", "Lights", "off", "on"));
        Channel pinned = new Channel(1, "left-toggle", true, List.of(new Carried("gear", List.of("down", "up"), null)));

        assertThat(sentences(squeeze.problem(pinned)))
                .containsExactly(
                        "1 of 1 channel is taken by Gear.",
                        "No channel is left for Lights.",
                        "Channel 1 is pinned on Left toggle and carries Gear only.");
    }

    @Test
    void passesOverWhatNeedsNoChannel() {
        Squeeze squeeze = Squeeze.gearAndCharging();
        ChannelProblem problem = squeeze.problem();

        assertThat(Explanation.of(problem).causes())
                .extracting(Cause::code)
                .doesNotContain("lights")
                .contains("gear", "charging");
        assertThat(Explanation.of(squeeze.with(Squeeze.mission("lights", "Lights", "off", "on")
                                        .withOtherwiseBy(RadioFunction.OtherwiseBy.DATA_LINK))
                                .problem())
                        .reasons())
                .isEqualTo(Explanation.of(problem).reasons());
    }

    private static List<String> sentences(ChannelProblem problem) {
        return Explanation.of(problem).reasons().stream().map(Reason::sentence).toList();
    }
}
