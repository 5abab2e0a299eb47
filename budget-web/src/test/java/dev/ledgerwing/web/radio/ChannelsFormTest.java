package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan made by hand. */
class ChannelsFormTest extends RadioFormWalk {

    private static final String CHANNELS = "/channels";

    private static Map<String, String> two() {
        return new HashMap<>(Map.ofEntries(
                Map.entry("channel.0.code", "1"),
                Map.entry("channel.0.number", "1"),
                Map.entry("channel.0.control", "stick"),
                Map.entry("channel.0.carried.0.function", "throttle"),
                Map.entry("channel.1.code", "5"),
                Map.entry("channel.1.number", "2"),
                Map.entry("channel.1.control", "b"),
                Map.entry("channel.1.carried.0.function", "gear"),
                Map.entry("channel.1.carried.0.state.0", "down"),
                Map.entry("channel.1.carried.0.state.1", "up"),
                Map.entry("channel.1.carried.0.state.2", "up"),
                Map.entry("channel.1.carried.0.preset", "down"),
                Map.entry("channel.1.carried.1.function", "pump"),
                Map.entry("channel.1.carried.1.state.0", "off"),
                Map.entry("channel.1.carried.1.state.1", "off"),
                Map.entry("channel.1.carried.1.state.2", "on")));
    }

    @Test
    void aPlanIsMadeFromNothing() {
        others(build -> equipped(build).withChannels(List.of()));
        Page added = press(browser.open(radio + CHANNELS), CHANNELS, "add:channel");
        Page chosen = sendOn(
                added,
                CHANNELS,
                Map.of("channel.0.number", "4", "channel.0.control", "a", "row", "add:channel.0.carried"));
        Page shown = sendOn(chosen, CHANNELS, Map.of("channel.0.carried.0.function", "pump", "row", "look"));
        assertThat(shown.document().select("[name^=channel.0.carried.0.state]")).hasSize(2);
        Page after = sendOn(
                shown, CHANNELS, Map.of("channel.0.carried.0.state.0", "on", "channel.0.carried.0.state.1", "off"));
        assertThat(after.path()).isEqualTo(radio);
        assertThat(build().radio().channels())
                .containsExactly(new Channel(4, "a", false, List.of(new Carried("pump", List.of("on", "off"), null))));
        assertThat(title()).isEqualTo("Channels edited by hand");
    }

    @Test
    void whatIsThereIsShownAndSavedAsItIs() {
        others(RadioFormWalk::equipped);
        Page form = browser.open(radio + CHANNELS);
        assertThat(FormWalk.ticked(form, "channel.0.pinned")).hasSize(1);
        assertThat(form.document()
                        .select("[name=channel.1.carried.0.state.1] [selected]")
                        .text())
                .isEqualTo("up");
        int before = number();
        sendOn(form, CHANNELS, Map.of());
        assertThat(number()).isEqualTo(before);
    }

    @Test
    void thePositionsFollowTheControl() {
        others(RadioFormWalk::equipped);
        Page form = browser.open(radio + CHANNELS);
        Page wider = sendOn(form, CHANNELS, Map.of("channel.1.control", "b", "row", "look"));
        assertThat(wider.document().select("[name^=channel.1.carried.0.state]")).hasSize(3);
        Page mixed = sendOn(wider, CHANNELS, Map.of("channel.1.control", "a-b", "row", "look"));
        assertThat(mixed.document().select("[name^=channel.1.carried.0.state]")).hasSize(6);
        Page stick = sendOn(form, CHANNELS, Map.of("channel.1.control", "stick", "row", "look"));
        assertThat(stick.document().select("[name^=channel.1.carried.0.state]")).isEmpty();
        assertThat(stick.text()).contains("Left stick has no positions: what was said of more goes when you save.");
        Page missing = sendOn(form, CHANNELS, Map.of("channel.1.control", "b"));
        assertThat(missing.status()).isEqualTo(422);
        assertThat(FormWalk.error(missing, "channel.1.carried.1.state.2")).contains("at position 3");
        sendOn(
                missing,
                CHANNELS,
                Map.of(
                        "channel.1.carried.0.state.2",
                        "up",
                        "channel.1.carried.1.state.2",
                        "on",
                        "channel.1.number",
                        "6"));
        Channel changed = build().radio().channels().get(1);
        assertThat(changed.number()).isEqualTo(6);
        assertThat(changed.carries())
                .extracting(Carried::states)
                .containsExactly(List.of("down", "up", "up"), List.of("off", "on", "on"));
    }

    @Test
    void functionsAndChannelsAreTakenOut() {
        others(RadioFormWalk::equipped);
        Page off = press(browser.open(radio + CHANNELS), CHANNELS, "remove:channel.1.carried:0");
        assertThat(off.document()
                        .select("[name=channel.1.carried.0.state.1] [selected]")
                        .text())
                .isEqualTo("on");
        Page gone = press(off, CHANNELS, "remove:channel:0");
        assertThat(gone.document().select(".notice").text()).contains("Channel 1 goes when you save");
        sendOn(gone, CHANNELS, Map.of());
        assertThat(build().radio().channels())
                .containsExactly(new Channel(5, "a", false, List.of(new Carried("pump", List.of("off", "on"), null))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            channel.1.number; 1; Channel 1 is there already
            channel.1.number; 7; The link has 6 channels.
            channel.1.number; 0; This is a whole number from 1 to 32.
            channel.1.number; 33; This is a whole number from 1 to 32.
            channel.1.number; ; Please give the number
            channel.1.number; five; is not a number
            channel.1.control; gone; not there any more
            channel.1.carried.0.function; gone; not there any more
            channel.1.carried.0.function; ; Please choose the function.
            channel.1.carried.1.state.2; sideways; no such state
            channel.1.carried.1.state.2; ; Please say its state at position 3.
            channel.1.carried.0.preset; half; no such state
            channel.0.carried.0.preset; off; no such state
            """)
    void aChannelThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new ChannelsForm(), equipped(airframe("godwit")), two());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void aFunctionIsOnAChannelOnceAndAProportionalOneNotBesideSwitchedOnes() {
        Map<String, String> twice = two();
        twice.put("channel.1.carried.1.state.0", "down");
        twice.put("channel.1.carried.1.state.1", "down");
        twice.put("channel.1.carried.1.state.2", "up");
        new Troubles(new ChannelsForm(), equipped(airframe("godwit")), twice)
                .say("channel.1.carried.1.function", "gear", "on the channel already");
        new Troubles(new ChannelsForm(), equipped(airframe("godwit")), two())
                .say("channel.1.carried.1.function", "throttle", "cannot be on a channel together with switched ones");
    }

    @Test
    void moreChannelsThanTheLinkHasFindNoNumber() {
        others(RadioFormWalk::equipped);
        Map<String, String> many = new HashMap<>();
        for (int i = 0; i < 7; i++) {
            many.put("channel." + i + ".number", Integer.toString(i + 1));
            many.put("channel." + i + ".pinned", "on");
        }
        Page again = send(CHANNELS, many);
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "channel.6.number")).isEqualTo("The link has 6 channels.");
        assertThat(again.document().select(".error")).hasSize(1);
        assertThat(FormWalk.value(again, "channel.6.number")).isEqualTo("7");
    }

    @Test
    void whatOthersAddedMeanwhileIsNotLostAndOneChannelClashes() {
        others(RadioFormWalk::equipped);
        Page form = browser.open(radio + CHANNELS);
        others(build -> build.withChannels(List.of(
                build.radio().channels().get(0).withControl(null),
                build.radio().channels().get(1),
                new Channel(6, null, false, List.of()))));
        sendOn(form, CHANNELS, Map.of("channel.1.carried.1.preset", "off"));
        assertThat(build().radio().channels()).extracting(Channel::number).containsExactly(1, 5, 6);
        Page again = sendOn(form, CHANNELS, Map.of("channel.0.control", "b"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document()
                        .select("[name=channel.0.control] [selected]")
                        .val())
                .isEqualTo("b");
        sendOn(again, CHANNELS, Map.of());
        assertThat(build().radio().channels()).extracting(Channel::control).containsExactly("b", "a", null);
    }
}
