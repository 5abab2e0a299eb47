package dev.ledgerwing.web.power;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The functions that parts can serve. */
class FunctionsFormTest extends PowerFormWalk {

    private static final String FUNCTIONS = "/functions";

    private static Map<String, String> two() {
        return Map.of(
                "function.0.name", "Aileron",
                "function.0.kind", "PROPORTIONAL",
                "function.0.criticality", "FLIGHT",
                "function.1.name", "Sample drop",
                "function.1.kind", "SWITCHED",
                "function.1.states", "held, dropped",
                "function.1.criticality", "MISSION",
                "function.1.irreversible", "on");
    }

    @Test
    void functionsAreNamedFromNothing() {
        Page after = send(FUNCTIONS, two());
        assertThat(after.path()).isEqualTo(power);
        assertThat(build().radio().functions())
                .containsExactly(
                        new RadioFunction(
                                "aileron", "Aileron", Kind.PROPORTIONAL, List.of(), Criticality.FLIGHT, false),
                        new RadioFunction(
                                "sample-drop",
                                "Sample drop",
                                Kind.SWITCHED,
                                List.of("held", "dropped"),
                                Criticality.MISSION,
                                true));
        Page form = browser.open(power + FUNCTIONS);
        assertThat(FormWalk.value(form, "function.1.states")).isEqualTo("held, dropped");
        int before = number();
        sendOn(form, FUNCTIONS, Map.of());
        assertThat(number()).isEqualTo(before);
    }

    @Test
    void aFunctionIsRenamedMovedAndAdded() {
        send(FUNCTIONS, two());
        Page moved = press(browser.open(power + FUNCTIONS), FUNCTIONS, "earlier:function:1");
        Page added = press(moved, FUNCTIONS, "add:function");
        sendOn(
                added,
                FUNCTIONS,
                Map.of("function.1.name", "Roll", "function.2.name", "Lamp", "function.2.criticality", "CONVENIENCE"));
        assertThat(build().radio().functions())
                .extracting(RadioFunction::code)
                .containsExactly("sample-drop", "aileron", "lamp");
        assertThat(build().radio().functions().get(1).name()).isEqualTo("Roll");
    }

    @Test
    void aFunctionGoesWithWhatMentionsItAndThisIsSaidBefore() {
        send(FUNCTIONS, two());
        send("/loads/L3", Map.of("serves", "aileron"));
        Page removed = press(browser.open(power + FUNCTIONS), FUNCTIONS, "remove:function:0");
        assertThat(removed.document().select(".notice").text())
                .contains("“Aileron” goes when you save, and with it that Aileron servo serves it.");
        sendOn(removed, FUNCTIONS, Map.of());
        assertThat(build().radio().functions()).extracting(RadioFunction::code).containsExactly("sample-drop");
        assertThat(build().line("L3").orElseThrow().serves()).isEmpty();
        assertThat(title()).isEqualTo("Functions edited, removed: Aileron");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            function.1.name; ; Please name the function.
            function.0.kind; DIGITAL; Please choose one from the list.
            function.0.states; up, down; has no states
            function.0.criticality; NONE; Please choose one from the list.
            function.1.states; ; two at least
            function.1.states; held; two at least
            function.1.states; held, held; the same name
            """)
    void aFunctionThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new FunctionsForm(), airframe("godwit"), two());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        refusedEverywhere(FUNCTIONS, Map.of("function.0.name", "", "function.0.states", "up, down"));
    }

    @Test
    void whatOthersAddedMeanwhileIsNotLost() {
        send(FUNCTIONS, two());
        Page form = browser.open(power + FUNCTIONS);
        others(build -> build.withFunctions(List.of(
                new RadioFunction("yaw", "Yaw", Kind.PROPORTIONAL, List.of(), Criticality.FLIGHT, false),
                build.radio().functions().get(0),
                build.radio().functions().get(1))));
        sendOn(form, FUNCTIONS, Map.of("function.0.name", "Roll"));
        assertThat(build().radio().functions())
                .extracting(RadioFunction::name)
                .containsExactlyInAnyOrder("Yaw", "Roll", "Sample drop");
    }

    @Test
    void twoWhoRenameOneFunctionClash() {
        send(FUNCTIONS, two());
        Page form = browser.open(power + FUNCTIONS);
        send(FUNCTIONS, Map.of("function.0.name", "Theirs"));
        Page again = sendOn(form, FUNCTIONS, Map.of("function.0.name", "Mine"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "function.0.name")).isEqualTo("Mine");
        sendOn(again, FUNCTIONS, Map.of());
        assertThat(build().radio().functions().get(0).name()).isEqualTo("Mine");
    }
}
