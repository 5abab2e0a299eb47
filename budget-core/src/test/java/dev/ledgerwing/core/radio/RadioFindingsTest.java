package dev.ledgerwing.core.radio;

import static dev.ledgerwing.core.radio.Radios.CRUISE;
import static dev.ledgerwing.core.radio.Radios.LANDING;
import static dev.ledgerwing.core.radio.Radios.LEFT;
import static dev.ledgerwing.core.radio.Radios.POWER_ON;
import static dev.ledgerwing.core.radio.Radios.STICK;
import static dev.ledgerwing.core.radio.Radios.build;
import static dev.ledgerwing.core.radio.Radios.carried;
import static dev.ledgerwing.core.radio.Radios.channel;
import static dev.ledgerwing.core.radio.Radios.charging;
import static dev.ledgerwing.core.radio.Radios.gear;
import static dev.ledgerwing.core.radio.Radios.presets;
import static dev.ledgerwing.core.radio.Radios.radio;
import static dev.ledgerwing.core.radio.Radios.throttle;
import static dev.ledgerwing.core.radio.Radios.withCells;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PulseTrain;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RadioFindingsTest {

    private static final Channel ONE = channel(1, "stick", carried("throttle", "low end"));
    private static final Channel TWO = channel(2, "left", carried("gear", "down", "down", "up"));
    private static final Channel THREE = channel(3, "right", carried("charging", "off", "off", "on", "on"));
    private static final Channel BOTH =
            channel(2, "left", carried("gear", "down", "down", "up"), carried("charging", "off", "off", "on"));

    private static final RadioFunction GEAR = gear("down", "up", "down");
    private static final RadioFunction CHARGING = charging("off", "on", "off");

    private static Build with(@Nullable RadioLink link, Channel... channels) {
        return with(link, GEAR, CHARGING, channels);
    }

    private static Build with(
            @Nullable RadioLink link, RadioFunction gear, RadioFunction charging, Channel... channels) {
        return build(radio(link, List.of(throttle("low end"), gear, charging), channels));
    }

    private static List<Finding> findings(Build build) {
        return RadioFindings.of(RadioStatement.of(build), Figures.METRIC);
    }

    private static Finding only(String code, Build build) {
        List<Finding> found = of(code, build);
        assertThat(found).as("%s", findings(build)).hasSize(1);
        return found.get(0);
    }

    private static List<Finding> of(String code, Build build) {
        return findings(build).stream()
                .filter(finding -> finding.code().equals(code))
                .toList();
    }

    private static void says(Finding finding, Verdict verdict, String sentence) {
        assertThat(Said.sentence(finding)).isEqualTo(sentence);
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.budget()).isEqualTo(Budget.RADIO);
    }

    @Test
    void saysWhereToBegin() {
        says(
                only("radio.nothing", Ledgers.with()),
                Verdict.UNKNOWN,
                "Nothing of the radio is recorded: begin with the link, the controls of the transmitter and what the pilot commands.");
        says(
                only("radio.nothing", build(radio(presets(4), List.of()))),
                Verdict.UNKNOWN,
                "No functions are recorded: enter what the pilot commands.");
    }

    @Test
    void holdsWhereEachFunctionHasItsOwnChannel() {
        List<Finding> findings = findings(with(presets(4), ONE, TWO, THREE));
        assertThat(findings)
                .extracting(Finding::code, Finding::verdict, Finding::sentence)
                .containsExactly(
                        tuple(
                                "radio.plan",
                                Verdict.HOLDS,
                                "Everything fits on 3 of 4 channels, each function on its own."),
                        tuple("radio.link-loss", Verdict.HOLDS, "On loss of signal the receiver goes to its presets."),
                        tuple(
                                "radio.loss",
                                Verdict.HOLDS,
                                "On loss of signal every function is to go where it is wanted."));
    }

    @Test
    void isTightWhereItFitsOnlyBySharingAndSaysWhatThatCosts() {
        Build build = with(presets(2), ONE, BOTH);
        Finding plan = only("radio.plan", build);
        says(plan, Verdict.TIGHT, "Everything fits on 2 of 2 channels, with one pair of functions on one switch.");
        assertThat(plan.measured()).isEqualTo(2);
        assertThat(plan.limit()).isEqualTo(2);
        assertThat(plan.marginLeft()).isZero();
        assertThat(plan.unit()).isEqualTo("channels");
        says(
                only("radio.sharing", build),
                Verdict.TIGHT,
                "“Landing gear” and “Charging” share channel 2. In Cruise you cannot have Landing gear down without Charging off. And 3 more couplings.");
    }

    @Test
    void aFunctionThatGoesByTheDataLinkSharesNothing() {
        Build build = with(presets(2), GEAR, CHARGING.withOtherwiseBy(OtherwiseBy.DATA_LINK), ONE, BOTH);
        says(only("radio.plan", build), Verdict.HOLDS, "Everything fits on 2 of 2 channels, each function on its own.");
        assertThat(of("radio.sharing", build)).isEmpty();
    }

    @Test
    void aThrottleThatIsHeldBreaksBeforeItsChannelIsPlanned() {
        // UK guidance after CAP 658: on loss of signal a throttle goes to idle or off.
        PartLine motor =
                Ledgers.line("motor", Category.PROPULSION, 200, Basis.WEIGHED).withServes(List.of("throttle"));
        Build build = with(Radios.link(4, OnLoss.HOLD, ActsOnLoss.RECEIVER)).withLines(List.of(motor));
        assertThat(of("radio.loss", build))
                .extracting(Finding::verdict, Finding::sentence)
                .contains(
                        tuple(
                                Verdict.BREAKS,
                                "On loss of signal “Throttle” is wanted at its low end, but the receiver holds the last command: the propulsion would run on."));
    }

    @Test
    void saysThatMoreChannelsAreNeededThanThereAre() {
        Build build = with(presets(2), gear("down", "down,up", ""), charging("off", "off,on", ""));
        Finding plan = only("radio.plan", build);
        says(plan, Verdict.BREAKS, "3 channels are needed with the controls there are, the link has 2.");
        assertThat(plan.measured()).isEqualTo(3);
        assertThat(plan.marginLeft()).isEqualTo(-1);
    }

    @Test
    void saysThatNoNumberOfChannelsIsEnough() {
        Radio radio = new Radio(
                presets(8),
                List.of(STICK, LEFT),
                List.of(gear("down", "down,up", ""), charging("off", "off,on", "")),
                List.of(),
                List.of());
        says(
                only("radio.plan", build(radio)),
                Verdict.BREAKS,
                "What is asked does not fit on any number of channels with the controls there are.");
    }

    @Test
    void doesNotKnowWithoutTheLinkAndTheControls() {
        Radio radio = new Radio(null, List.of(), List.of(throttle("low end"), GEAR), List.of(), List.of());
        says(
                only("radio.plan", build(radio)),
                Verdict.UNKNOWN,
                "Whether everything fits on the channels is not known: enter the link and how many channels it has, a switch and a stick or a slider.");
    }

    @Test
    void saysThatAPlanFitsWhereNoneIsRecorded() {
        Build build = with(presets(4));
        says(
                only("radio.plan", build),
                Verdict.UNKNOWN,
                "The channels are not planned yet: a plan fits, on 3 of 4 channels.");
        assertThat(RadioStatement.of(build).isRecorded()).isFalse();
        assertThat(RadioStatement.of(build).inForce()).hasSize(3);
        assertThat(of("radio.loss", build)).isEmpty();
    }

    @Test
    void needsNoChannelWhereNothingIsCommandedByRadio() {
        Build build = build(radio(presets(4), List.of(GEAR.withOtherwiseBy(OtherwiseBy.ON_BOARD))));
        says(only("radio.plan", build), Verdict.HOLDS, "No function needs a channel of the radio.");
    }

    @Test
    void breaksWhereTheRecordedChannelsDoNotDoWhatIsAsked() {
        Build build = with(presets(4), GEAR, charging("off", "off,on", "off"), ONE, BOTH);
        says(
                only("radio.channel", build),
                Verdict.BREAKS,
                "In Cruise no position of channel 2 gives Landing gear up and Charging off.");
        Finding plan = only("radio.plan", build);
        says(plan, Verdict.BREAKS, "The recorded channels do not do what is asked, although a plan fits.");
        assertThat(plan.remedies())
                .extracting(remedy -> remedy.sentence())
                .containsExactly("Plan again: everything fits on 3 channels.");
    }

    @Test
    void saysWhatIsCarriedNowhereAndWhatNothingMoves() {
        assertThat(of("radio.channel", with(presets(4), ONE, TWO)))
                .extracting(Finding::sentence)
                .containsExactly("No channel carries “Charging”.");
        Channel loose = new Channel(3, null, false, THREE.carries());
        assertThat(of("radio.channel", with(presets(4), ONE, TWO, loose)))
                .extracting(Finding::sentence)
                .containsExactly("Nothing on the transmitter moves channel 3.");
    }

    /** What becomes of the function says it already. */
    @Test
    void saysAWrongPresetOnce() {
        Build build = with(presets(4), ONE, channel(2, "left", carried("gear", "up", "down", "up")), THREE);
        assertThat(findings(build).stream().filter(finding -> finding.verdict() == Verdict.BREAKS))
                .extracting(Finding::code, Finding::subject)
                .containsExactly(tuple("radio.loss", "Landing gear"));
    }

    @Test
    void asksHowStatesOnASharedChannelAreToldApart() {
        RadioFunction unknown = new RadioFunction(
                "gear",
                "Landing gear",
                GEAR.kind(),
                GEAR.states(),
                GEAR.criticality(),
                false,
                "down",
                null,
                GEAR.demandByPhase(),
                null);
        says(
                only("radio.decoder", with(presets(4), unknown, CHARGING, ONE, BOTH)),
                Verdict.UNKNOWN,
                "“Landing gear” shares channel 2, but how its states are told apart is not known: it is taken as a table that means any state by any range of the pulse.");
        assertThat(of("radio.decoder", with(presets(4), unknown, CHARGING, ONE, TWO, THREE)))
                .isEmpty();
    }

    @Test
    void asksForPhasesAndDemands() {
        Build build = Ledgers.with()
                .withRadio(radio(presets(4), List.of(GEAR.withDemandByPhase(Map.of()), throttle("low end"))));
        says(
                only("radio.no-phases", build),
                Verdict.UNKNOWN,
                "No phases are recorded: when “Landing gear” must be selectable is not known.");
        assertThat(of("radio.no-demand", build)).isEmpty();
        says(
                only("radio.no-demand", with(presets(4), gear("down", "", ""), CHARGING, ONE, TWO, THREE)),
                Verdict.UNKNOWN,
                "No phase asks anything of “Landing gear”: which of its states must be selectable is not known.");
    }

    @Test
    void asksWhatDoesNoHarmWhereTheAirframeIsSwitchedOn() {
        RadioFunction open = GEAR.withDemandByPhase(Map.of("cruise", GEAR.demandIn("cruise")));
        says(
                only("radio.first-phase", with(presets(4), open, CHARGING, ONE, TWO, THREE)),
                Verdict.UNKNOWN,
                "In Power on, the first phase, it is not said which states of “Landing gear” do no harm: a switch may stand anywhere when the airframe is switched on.");
    }

    @Test
    void asksForAPhaseBeforeOneThatIsFlownAgain() {
        Build build = with(presets(4), ONE, TWO, THREE)
                .withPhases(List.of(POWER_ON, CRUISE, LANDING.withNext(List.of("power-on"))));
        says(
                only("radio.first-phase", build),
                Verdict.UNKNOWN,
                "Power on is the first phase, but may follow Landing: put a phase before it in which the airframe is switched on.");
    }

    @Test
    void namesTogetherWhatIsNotSaidOfTheLoss() {
        Build build = build(radio(
                presets(4),
                List.of(throttle(null), gear(null, "up", ""), charging("off", "on", "off")),
                ONE,
                TWO,
                THREE));
        says(
                only("radio.loss-not-said", build),
                Verdict.UNKNOWN,
                "What “Throttle” and “Landing gear” are to do on loss of signal is not said.");
        Build silent = with(Radios.link(4, OnLoss.NO_PULSES, ActsOnLoss.RECEIVER), ONE, TWO, THREE);
        says(
                only("radio.loss-silence", silent),
                Verdict.UNKNOWN,
                "On loss of signal the receiver sends nothing: what “Throttle”, “Landing gear” and “Charging” do then is not known.");
    }

    @Test
    void asksThatAChargingCanBeStopped() {
        assertThat(of(
                        "radio.charge-stop",
                        withCells("charging", with(presets(4), GEAR, charging("off", "off,on", "")))))
                .isEmpty();
        says(
                only("radio.charge-stop", withCells("charging", with(presets(4), ONE, TWO, THREE))),
                Verdict.TIGHT,
                "In Cruise the sun can charge, but that the pilot must be able to switch “Charging” to off then is not asked.");
        Build notSaid = withCells("charging", with(presets(4), GEAR, charging(null, "off,on", ""), ONE, TWO, THREE));
        says(
                only("radio.charge-stop", notSaid),
                Verdict.UNKNOWN,
                "What “Charging” is to do on loss of signal is not said: it stops a charging, which is to be off then.");
        assertThat(of("radio.loss-not-said", notSaid)).isEmpty();
    }

    @Test
    void looksAtTheFrameOfAPulseTrainOnly() {
        assertThat(of("radio.frame", with(presets(4)))).isEmpty();
        RadioLink train =
                new RadioLink(11, OnLoss.PRESET, ActsOnLoss.RECEIVER, null, new PulseTrain(22_500.0, 2000, 2500));
        assertThat(only("radio.frame", with(train)).verdict()).isEqualTo(Verdict.BREAKS);
    }

    @Test
    void putsTheWorstFirst() {
        assertThat(findings(with(presets(2), GEAR, charging(null, "off,on", ""), ONE, BOTH)))
                .extracting(Finding::verdict)
                .isSortedAccordingTo((one, other) -> other.compareTo(one));
    }
}
