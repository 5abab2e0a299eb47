package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Combinations that the team can do without. */
class GivenUpFormTest extends RadioFormWalk {

    private static final String GIVEN = "/given-up";

    private static Map<String, String> one() {
        return new HashMap<>(Map.of(
                "given.0.state.0", "gear=down",
                "given.0.state.1", "pump=on",
                "given.0.phases", "cruise",
                "given.0.why", "Nobody pumps with the gear out"));
    }

    @Test
    void aCombinationIsGivenUpByWhoeverSaysSo() {
        others(build -> equipped(build).withNotNeeded(List.of()));
        Page added = press(browser.open(radio + GIVEN), GIVEN, "add:given");
        Page after = sendOn(added, GIVEN, one());
        assertThat(after.path()).isEqualTo(radio);
        assertThat(build().radio().notNeeded())
                .containsExactly(new NotNeeded(
                        "gear-down-pump-on",
                        List.of("cruise"),
                        List.of(new FunctionState("gear", "down"), new FunctionState("pump", "on")),
                        browserName(),
                        "Nobody pumps with the gear out"));
    }

    private String browserName() {
        return readings.head(code).revision().author();
    }

    @Test
    void whatWasGivenUpKeepsWhoDidItUntilItIsChanged() {
        others(RadioFormWalk::equipped);
        Page form = browser.open(radio + GIVEN);
        assertThat(form.text()).contains("Given up by Mara.");
        int before = number();
        sendOn(form, GIVEN, Map.of());
        assertThat(number()).isEqualTo(before);
        sendOn(form, GIVEN, Map.of("given.0.why", "Never flown like this"));
        NotNeeded given = build().radio().notNeeded().get(0);
        assertThat(given.id()).isEqualTo("N1");
        assertThat(given.by()).isEqualTo(browserName());
        assertThat(given.why()).isEqualTo("Never flown like this");
    }

    @Test
    void aCombinationIsTakenBackAndThisIsSaidBefore() {
        others(RadioFormWalk::equipped);
        Page back = press(browser.open(radio + GIVEN), GIVEN, "remove:given:0");
        assertThat(back.document().select(".notice").text()).contains("“Gear up with Pump off” is asked for again");
        sendOn(back, GIVEN, Map.of());
        assertThat(build().radio().notNeeded()).isEmpty();
        assertThat(title()).isEqualTo("Asked for again: Gear up with Pump off");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            given.0.state.0; ; states of two functions at least
            given.0.state.1; ; states of two functions at least
            given.0.state.1; gear=up; A function is in one state at a time
            given.0.state.1; pump=half; not there any more
            given.0.state.1; pump; not there any more
            given.0.state.0; flaps=up; not there any more
            given.0.phases; night; not there any more
            given.0.why; ; Please say what for
            """)
    void aCombinationThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new GivenUpForm("Ines"), equipped(airframe("godwit")), one());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void aReasonThatIsTooLongIsKeptAndRefused() {
        others(build -> equipped(build).withNotNeeded(List.of()));
        Map<String, String> wordy = one();
        wordy.put("given.0.why", "x".repeat(201));
        Page again = send(GIVEN, wordy);
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "given.0.why")).contains("at most 200 characters");
        assertThat(FormWalk.value(again, "given.0.why")).hasSize(201);
        assertThat(again.document().select("[name=given.0.state.1] [selected]").val())
                .isEqualTo("pump=on");
        assertThat(FormWalk.ticked(again, "given.0.phases")).containsExactly("cruise");
    }

    @Test
    void whatOthersGaveUpMeanwhileIsNotLost() {
        others(RadioFormWalk::equipped);
        Page form = browser.open(radio + GIVEN);
        NotNeeded theirs = new NotNeeded(
                "N2",
                List.of(),
                List.of(new FunctionState("gear", "down"), new FunctionState("pump", "on")),
                "Ines",
                "too heavy");
        others(build -> build.withNotNeeded(List.of(build.radio().notNeeded().get(0), theirs)));
        sendOn(form, GIVEN, Map.of("given.0.why", "Mine"));
        assertThat(build().radio().notNeeded()).extracting(NotNeeded::why).containsExactly("Mine", "too heavy");
        Page again = sendOn(form, GIVEN, Map.of("given.0.why", "Mine again"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "given.0.why")).isEqualTo("Mine again");
    }
}
