package dev.ledgerwing.core.radio;

import static dev.ledgerwing.core.radio.Radios.build;
import static dev.ledgerwing.core.radio.Radios.carried;
import static dev.ledgerwing.core.radio.Radios.channel;
import static dev.ledgerwing.core.radio.Radios.gear;
import static dev.ledgerwing.core.radio.Radios.link;
import static dev.ledgerwing.core.radio.Radios.radio;
import static dev.ledgerwing.core.radio.Radios.throttle;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.BoardLearnsBy;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.core.radio.LossRow.Happens;
import dev.ledgerwing.core.radio.LossRow.Reason;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LossRuleTest {

    private static final RadioLink PRESET = link(4, OnLoss.PRESET, ActsOnLoss.RECEIVER);
    private static final RadioLink HOLD = link(4, OnLoss.HOLD, ActsOnLoss.RECEIVER);
    private static final RadioLink NO_PULSES = link(4, OnLoss.NO_PULSES, ActsOnLoss.RECEIVER);

    private static RadioLink board(OnLoss onLoss, @Nullable BoardLearnsBy by) {
        return new RadioLink(4, onLoss, ActsOnLoss.BOARD, by, null);
    }

    private static LossRow row(@Nullable RadioLink link, RadioFunction function, Carried carried) {
        List<LossRow> rows = LossRule.rows(build(radio(link, List.of(function), channel(1, "left", carried))));
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    private static LossRow ofGear(@Nullable RadioLink link, @Nullable String preset) {
        return row(link, gear("down", "up", "down"), carried("gear", preset, "down", "up"));
    }

    private static void says(LossRow row, Verdict verdict, Reason reason, String sentence) {
        assertThat(row.sentence()).isEqualTo(sentence);
        assertThat(row.verdict()).isEqualTo(verdict);
        assertThat(row.reason()).isEqualTo(reason);
    }

    @Test
    void holdsWhereThePresetIsWhatIsWanted() {
        LossRow row = ofGear(PRESET, "down");
        says(
                row,
                Verdict.HOLDS,
                Reason.NOTHING_WRONG,
                "On loss of signal “Landing gear” goes to down by the preset of channel 1.");
        assertThat(row.goesTo()).isEqualTo("down");
        assertThat(row.happens()).isEqualTo(Happens.PRESET);
        assertThat(row.wanted()).isEqualTo("down");
    }

    @Test
    void breaksWhereThePresetIsAnother() {
        LossRow row = ofGear(PRESET, "up");
        says(
                row,
                Verdict.BREAKS,
                Reason.OTHER_PRESET,
                "On loss of signal “Landing gear” is wanted down, but the preset of channel 1 takes it to up.");
        assertThat(row.goesTo()).isEqualTo("up");
    }

    @Test
    void doesNotKnowWithoutThePreset() {
        says(
                ofGear(PRESET, null),
                Verdict.UNKNOWN,
                Reason.NO_PRESET,
                "On loss of signal “Landing gear” is wanted down, but its preset on channel 1 is not recorded.");
    }

    /** What is held is the last command, and the cruise asks for another one. */
    @Test
    void breaksWhereWhatIsHeldCanBeAnother() {
        LossRow row = ofGear(HOLD, null);
        says(
                row,
                Verdict.BREAKS,
                Reason.HELD,
                "On loss of signal “Landing gear” is wanted down, but the receiver holds the last command, and in Cruise that can be up.");
        assertThat(row.goesTo()).isNull();
    }

    @Test
    void isTightWhereWhatIsHeldIsLeftToThePilot() {
        says(
                row(HOLD, gear("down", "down", "down"), carried("gear", null, "down", "up")),
                Verdict.TIGHT,
                Reason.HELD,
                "On loss of signal “Landing gear” is wanted down, but the receiver holds the last command: it must be left there in flight.");
        says(
                row(HOLD, gear("down", "down", "down"), carried("gear", null, "down", "down")),
                Verdict.HOLDS,
                Reason.NOTHING_WRONG,
                "On loss of signal “Landing gear” stays down.");
    }

    @Test
    void breaksWhereASurfaceIsHeldWhereverItWas() {
        says(
                row(HOLD, throttle("middle"), carried("throttle", null)),
                Verdict.BREAKS,
                Reason.HELD,
                "On loss of signal “Throttle” is wanted at its middle, but the receiver holds the last command, wherever the stick was.");
    }

    @Test
    void doesNotKnowWhatSilenceDoes() {
        says(
                ofGear(NO_PULSES, null),
                Verdict.UNKNOWN,
                Reason.NO_PULSES,
                "On loss of signal “Landing gear” is wanted down, but the receiver sends nothing: what it does by itself is not known.");
    }

    @Test
    void leavesItToABoardThatKnows() {
        LossRow row = ofGear(board(OnLoss.PRESET, BoardLearnsBy.FLAG), null);
        says(
                row,
                Verdict.HOLDS,
                Reason.NOTHING_WRONG,
                "On loss of signal the flight controller is to take “Landing gear” to down.");
        assertThat(row.happens()).isEqualTo(Happens.BOARD);
    }

    @Test
    void leavesItToTheReceiverWhereTheBoardIsNotTold() {
        assertThat(ofGear(board(OnLoss.HOLD, BoardLearnsBy.NOTHING), null).reason())
                .isEqualTo(Reason.HELD);
        assertThat(ofGear(board(OnLoss.PRESET, BoardLearnsBy.SILENCE), "down").happens())
                .isEqualTo(Happens.PRESET);
    }

    @Test
    void doesNotKnowWithoutTheLinkOrWhoActs() {
        String sentence = "On loss of signal “Landing gear” is wanted down; what becomes of it then is not known.";
        says(ofGear(null, "down"), Verdict.UNKNOWN, Reason.LINK, sentence);
        says(ofGear(link(4, null, ActsOnLoss.RECEIVER), "down"), Verdict.UNKNOWN, Reason.LINK, sentence);
        says(ofGear(link(4, OnLoss.PRESET, null), "down"), Verdict.UNKNOWN, Reason.LINK, sentence);
        says(ofGear(board(OnLoss.PRESET, null), "down"), Verdict.UNKNOWN, Reason.LINK, sentence);
    }

    @Test
    void doesNotKnowOfWhatIsOnNoChannel() {
        Build build = build(radio(PRESET, List.of(gear("down", "up", ""))));
        says(
                LossRule.rows(build).get(0),
                Verdict.UNKNOWN,
                Reason.NO_CHANNEL,
                "What becomes of “Landing gear” on loss of signal is not known: no channel is recorded for it.");
    }

    @Test
    void asksForWhatIsNotSaidUnlessItIsComfort() {
        says(
                row(PRESET, gear(null, "up", ""), carried("gear", null, "down", "up")),
                Verdict.UNKNOWN,
                Reason.NOT_SAID,
                "What “Landing gear” is to do on loss of signal is not said.");
        RadioFunction lights = new RadioFunction(
                "lights", "Lights", Kind.SWITCHED, List.of("off", "on"), Criticality.CONVENIENCE, false);
        says(
                row(PRESET, lights, carried("lights", null, "off", "on")),
                Verdict.HOLDS,
                Reason.NOTHING_WRONG,
                "Nothing is asked of “Lights” on loss of signal.");
        Build stops = Radios.withCells(
                "lights",
                build(radio(PRESET, List.of(lights), channel(1, "left", carried("lights", null, "off", "on")))));
        assertThat(LossRule.rows(stops).get(0).verdict()).isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void leavesOutWhatTheRadioDoesNotCommand() {
        Build build = build(radio(PRESET, List.of(gear("down", "up", "").withOtherwiseBy(OtherwiseBy.ON_BOARD))));
        assertThat(LossRule.rows(build)).isEmpty();
    }

    private static LossRow ofThrottle(RadioLink link, @Nullable String wanted, @Nullable String preset) {
        PartLine motor =
                Ledgers.line("motor", Category.PROPULSION, 200, Basis.WEIGHED).withServes(List.of("throttle"));
        Build build = build(radio(link, List.of(throttle(wanted)), channel(1, "stick", carried("throttle", preset))))
                .withLines(List.of(motor));
        return LossRule.rows(build).get(0);
    }

    /** The published guidance: idle or off, and not what was last commanded. */
    @Test
    void wantsAThrottleAtItsLowEnd() {
        says(
                ofThrottle(PRESET, "low end", "low end"),
                Verdict.HOLDS,
                Reason.NOTHING_WRONG,
                "On loss of signal “Throttle” goes to its low end by the preset of channel 1.");
        says(
                ofThrottle(PRESET, "middle", "middle"),
                Verdict.BREAKS,
                Reason.THROTTLE,
                "“Throttle” is to go to its middle on loss of signal: a throttle must go to its low end, idle or off.");
        says(
                ofThrottle(HOLD, "low end", null),
                Verdict.BREAKS,
                Reason.THROTTLE,
                "On loss of signal “Throttle” is wanted at its low end, but the receiver holds the last command: the propulsion would run on.");
        says(
                ofThrottle(PRESET, "low end", "middle"),
                Verdict.BREAKS,
                Reason.THROTTLE,
                "On loss of signal “Throttle” is wanted at its low end, but the preset of channel 1 takes it to its middle.");
        assertThat(ofThrottle(PRESET, null, "low end").verdict()).isEqualTo(Verdict.UNKNOWN);
    }

    private static void linkSays(RadioLink link, Verdict verdict, String sentence) {
        LossOfSignal.Judgement judged = new LossOfSignal(link).judged();
        assertThat(judged.sentence()).isEqualTo(sentence);
        assertThat(judged.verdict()).isEqualTo(verdict);
    }

    @Test
    void saysWhatTheReceiverDoesWhereItActs() {
        linkSays(HOLD, Verdict.HOLDS, "On loss of signal the receiver holds the last command.");
        linkSays(PRESET, Verdict.HOLDS, "On loss of signal the receiver goes to its presets.");
        linkSays(NO_PULSES, Verdict.HOLDS, "On loss of signal the receiver sends nothing.");
    }

    @Test
    void asksWhatTheLinkDoesAndWhoActs() {
        linkSays(
                RadioLink.of(4),
                Verdict.UNKNOWN,
                "What the receiver does on loss of signal is not known: enter whether it holds the last command, goes to presets or sends nothing.");
        linkSays(
                link(4, OnLoss.HOLD, null),
                Verdict.UNKNOWN,
                "Who acts on loss of signal is not known: enter the receiver or the flight controller.");
        linkSays(
                board(OnLoss.HOLD, null),
                Verdict.UNKNOWN,
                "The flight controller is to act on loss of signal, but how it learns of it is not known.");
    }

    @Test
    void breaksWhereTheBoardThatActsIsNotTold() {
        linkSays(
                board(OnLoss.NO_PULSES, BoardLearnsBy.NOTHING),
                Verdict.BREAKS,
                "The flight controller is to act on loss of signal, but nothing tells it that the signal is lost.");
        linkSays(
                board(OnLoss.PRESET, BoardLearnsBy.SILENCE),
                Verdict.BREAKS,
                "The flight controller is to act on loss of signal, but it waits for silence, and the receiver goes to its presets: that looks like a live link and masks the loss.");
        linkSays(
                board(OnLoss.HOLD, BoardLearnsBy.OUT_OF_RANGE),
                Verdict.BREAKS,
                "The flight controller is to act on loss of signal, but it waits for a channel out of its range, and the receiver holds the last command: no channel ever goes there.");
    }

    @Test
    void breaksWhereNothingTellsTheBoardWhateverTheReceiverDoes() {
        linkSays(
                new RadioLink(4, null, ActsOnLoss.BOARD, BoardLearnsBy.NOTHING, null),
                Verdict.BREAKS,
                "The flight controller is to act on loss of signal, but nothing tells it that the signal is lost.");
    }

    @ParameterizedTest
    @CsvSource({
        "HOLD, FLAG, HOLDS", "PRESET, FLAG, HOLDS", "NO_PULSES, FLAG, HOLDS",
        "HOLD, SILENCE, BREAKS", "PRESET, SILENCE, BREAKS", "NO_PULSES, SILENCE, HOLDS",
        "HOLD, OUT_OF_RANGE, BREAKS", "PRESET, OUT_OF_RANGE, HOLDS", "NO_PULSES, OUT_OF_RANGE, BREAKS",
        "HOLD, NOTHING, BREAKS", "PRESET, NOTHING, BREAKS", "NO_PULSES, NOTHING, BREAKS"
    })
    void knowsByWhatABoardLearnsOfTheLoss(OnLoss onLoss, BoardLearnsBy by, Verdict verdict) {
        LossOfSignal loss = new LossOfSignal(board(onLoss, by));
        assertThat(loss.judged().verdict()).isEqualTo(verdict);
        assertThat(loss.happens() == Happens.BOARD).isEqualTo(verdict == Verdict.HOLDS);
    }

    @Test
    void leavesADemandThatIsEmptyAside() {
        RadioFunction function = gear("down", "", "").withDemandByPhase(Map.of());
        assertThat(row(HOLD, function, carried("gear", null, "down", "up")).verdict())
                .isEqualTo(Verdict.TIGHT);
    }
}
