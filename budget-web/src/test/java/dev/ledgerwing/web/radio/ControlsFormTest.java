package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Control.Kind;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the pilot moves. */
class ControlsFormTest extends RadioFormWalk {

    private static final String CONTROLS = "/controls";

    private static Map<String, String> four() {
        return Map.ofEntries(
                Map.entry("control.0.name", "Left stick"),
                Map.entry("control.0.kind", "STICK"),
                Map.entry("control.1.name", "Both"),
                Map.entry("control.1.kind", "MIXED"),
                Map.entry("control.1.coarse", "left-switch"),
                Map.entry("control.1.fine", "right-switch"),
                Map.entry("control.2.name", "Left switch"),
                Map.entry("control.2.kind", "SWITCH"),
                Map.entry("control.2.positions", "2"),
                Map.entry("control.3.name", "Right switch"),
                Map.entry("control.3.kind", "SWITCH"),
                Map.entry("control.3.positions", "3"));
    }

    @Test
    void controlsAreNamedFromNothingAndAMixHasThePositionsOfBothSwitches() {
        Page after = send(CONTROLS, four());
        assertThat(after.path()).isEqualTo(radio);
        assertThat(build().radio().controls())
                .containsExactly(
                        Control.of("left-stick", "Left stick", Kind.STICK),
                        new Control("both", "Both", Kind.MIXED, 6, List.of("left-switch", "right-switch")),
                        Control.ofSwitch("left-switch", "Left switch", 2),
                        Control.ofSwitch("right-switch", "Right switch", 3));
        Page form = browser.open(radio + CONTROLS);
        int before = number();
        sendOn(form, CONTROLS, Map.of());
        assertThat(number()).isEqualTo(before);
        sendOn(form, CONTROLS, Map.of("control.3.positions", "4"));
        assertThat(build().radio().controls().get(1).positions()).isEqualTo(8);
    }

    @Test
    void rowsComeByTheirKindAndMove() {
        Page added = press(browser.open(radio + CONTROLS), CONTROLS, "add:control:SLIDER");
        Page switched = sendOn(added, CONTROLS, Map.of("control.0.name", "Left slider", "row", "add:control:SWITCH"));
        assertThat(switched.document().select("[name=control.0.positions]")).isEmpty();
        Page moved = sendOn(
                switched,
                CONTROLS,
                Map.of("control.1.name", "Arm", "control.1.positions", "3", "row", "earlier:control:1"));
        sendOn(moved, CONTROLS, Map.of());
        assertThat(build().radio().controls())
                .containsExactly(
                        Control.ofSwitch("arm", "Arm", 3), Control.of("left-slider", "Left slider", Kind.SLIDER));
    }

    @Test
    void aControlGoesFromItsChannelAndThisIsSaidBefore() {
        others(RadioFormWalk::equipped);
        sendOn(press(browser.open(radio + CONTROLS), CONTROLS, "remove:control:3"), CONTROLS, Map.of());
        Page removed = press(browser.open(radio + CONTROLS), CONTROLS, "remove:control:1");
        assertThat(removed.document().select(".notice").text())
                .contains("“Left switch” goes when you save, and with it what moves channel 5.");
        sendOn(removed, CONTROLS, Map.of());
        assertThat(build().radio().controls()).extracting(Control::code).containsExactly("stick", "b");
        assertThat(build().radio().channels()).extracting(Channel::control).containsExactly("stick", null);
    }

    @Test
    void aMixWhoseSwitchWasTakenOutAsksForAnother() {
        others(RadioFormWalk::equipped);
        Page removed = press(browser.open(radio + CONTROLS), CONTROLS, "remove:control:1");
        Page again = sendOn(removed, CONTROLS, Map.of("control.2.coarse", "a"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "control.2.coarse")).contains("not there any more");
        assertThat(build().radio().controls()).hasSize(4);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            control.2.name; ; Please name the control.
            control.3.name; left SWITCH; Another control has this name
            control.0.kind; LEVER; Please choose one from the list.
            control.2.positions; 0; This is a whole number from 2 to 12.
            control.2.positions; 1; This is a whole number from 2 to 12.
            control.2.positions; 13; This is a whole number from 2 to 12.
            control.2.positions; ; Please give how many positions
            control.2.positions; two; is not a number
            control.1.fine; left-switch; cannot be mixed with itself
            control.1.fine; ; Please choose a switch.
            control.1.fine; left-stick; not there any more
            control.1.coarse; gone; not there any more
            control.1.coarse; ; Please choose a switch.
            """)
    void aControlThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new ControlsForm(), airframe("godwit"), withCodes());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    /** As the page is sent once it was shown again, so that the mix keeps its switches while one is renamed. */
    private static Map<String, String> withCodes() {
        Map<String, String> fields = new HashMap<>(four());
        fields.put("control.2.code", "left-switch");
        fields.put("control.3.code", "right-switch");
        return fields;
    }

    @Test
    void switchesThatTogetherHaveTooManyPositionsAreNotMixed() {
        Map<String, String> good = new HashMap<>(withCodes());
        good.put("control.2.positions", "4");
        Troubles troubles = new Troubles(new ControlsForm(), airframe("godwit"), good);
        good.put("control.3.positions", "4");
        troubles.say("control.1.fine", "right-switch", "Together they would have 16 positions");
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        Page form = press(browser.open(radio + CONTROLS), CONTROLS, "add:control:SWITCH");
        String longName = "x".repeat(201);
        Page again = sendOn(form, CONTROLS, Map.of("control.0.name", longName, "control.0.positions", "-3"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "control.0.name")).contains("at most 200 characters");
        assertThat(FormWalk.error(again, "control.0.positions")).contains("from 2 to 12");
        assertThat(FormWalk.value(again, "control.0.name")).isEqualTo(longName);
        assertThat(FormWalk.value(again, "control.0.positions")).isEqualTo("-3");
    }

    @Test
    void whatOthersAddedMeanwhileIsNotLostAndOneControlClashes() {
        others(RadioFormWalk::equipped);
        Page form = browser.open(radio + CONTROLS);
        others(build -> build.withControls(List.of(
                Control.of("dial", "Dial", Kind.SLIDER),
                build.radio().controls().get(0),
                build.radio().controls().get(1),
                build.radio().controls().get(2).withPositions(2),
                build.radio().controls().get(3).withPositions(4))));
        sendOn(form, CONTROLS, Map.of("control.0.name", "Stick"));
        assertThat(build().radio().controls())
                .extracting(Control::name)
                .contains("Dial", "Stick")
                .hasSize(5);
        Page again = sendOn(form, CONTROLS, Map.of("control.0.name", "Mine"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "control.0.name")).isEqualTo("Mine");
    }
}
