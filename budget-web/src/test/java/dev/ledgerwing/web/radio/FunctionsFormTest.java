package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The functions that parts can serve. */
class FunctionsFormTest extends RadioFormWalk {

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
        assertThat(after.path()).isEqualTo(radio);
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
        Page form = browser.open(radio + FUNCTIONS);
        assertThat(FormWalk.value(form, "function.1.states")).isEqualTo("held\ndropped");
        int before = number();
        sendOn(form, FUNCTIONS, Map.of());
        assertThat(number()).isEqualTo(before);
    }

    @Test
    void aFunctionIsRenamedMovedAndAdded() {
        send(FUNCTIONS, two());
        Page moved = press(browser.open(radio + FUNCTIONS), FUNCTIONS, "earlier:function:1");
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
        others(build -> build.withLines(build.lines().stream()
                .map(line -> line.id().equals("L3") ? line.withServes(List.of("aileron")) : line)
                .toList()));
        Page removed = press(browser.open(radio + FUNCTIONS), FUNCTIONS, "remove:function:0");
        assertThat(removed.document().select(".notice").text())
                .contains("“Aileron” goes when you save, and with it that Aileron servo serves it.");
        sendOn(removed, FUNCTIONS, Map.of());
        assertThat(build().radio().functions()).extracting(RadioFunction::code).containsExactly("sample-drop");
        assertThat(build().line("L3").orElseThrow().serves()).isEmpty();
        assertThat(title()).isEqualTo("Functions edited, removed: Aileron");
    }

    @Test
    void whatPhasesAskIsKeptWhenAFunctionIsSaved() {
        others(RadioFormWalk::equipped);
        List<RadioFunction> before = build().radio().functions();
        sendOn(browser.open(radio + FUNCTIONS), FUNCTIONS, Map.of("function.1.name", "Landing gear"));
        RadioFunction gear = build().radio().functions().get(1);
        assertThat(gear.name()).isEqualTo("Landing gear");
        assertThat(gear.demandByPhase())
                .isEqualTo(before.get(1).demandByPhase())
                .hasSize(2);
        assertThat(gear.onSignalLoss()).isEqualTo("down");
        assertThat(gear.decodedBy()).isEqualTo(RadioFunction.DecodedBy.ONE_STEP);
        assertThat(build().radio().functions().get(0)).isEqualTo(before.get(0));
    }

    @Test
    void aStateIsRenamedWhereverItIsSpokenOf() {
        others(RadioFormWalk::equipped);
        sendOn(
                browser.open(radio + FUNCTIONS),
                FUNCTIONS,
                Map.of("function.1.states", "out\r\nin", "function.1.name", "Legs"));
        RadioFunction gear = build().radio().functions().get(1);
        assertThat(gear.states()).containsExactly("out", "in");
        assertThat(gear.onSignalLoss()).isEqualTo("out");
        assertThat(gear.demandByPhase())
                .isEqualTo(Map.of(
                        "power-on", new Demand(List.of(), List.of("out")), "cruise", Demand.select("out", "in")));
        assertThat(build().radio().channels().get(1).carries().get(0))
                .isEqualTo(new Channel.Carried("gear", List.of("out", "in"), "out"));
        assertThat(build().radio().notNeeded().get(0).states().get(0))
                .isEqualTo(new NotNeeded.FunctionState("gear", "in"));
    }

    @Test
    void aStateIsAddedWithoutTouchingTheOthers() {
        others(RadioFormWalk::equipped);
        sendOn(
                browser.open(radio + FUNCTIONS),
                FUNCTIONS,
                Map.of("function.2.states", "off, slow, on", "function.2.loss", "OFF", "function.2.decoded", "SERVO"));
        RadioFunction pump = build().radio().functions().get(2);
        assertThat(pump.states()).containsExactly("off", "slow", "on");
        assertThat(pump.onSignalLoss()).isEqualTo("off");
        assertThat(build().radio().channels()).hasSize(2);
    }

    @Test
    void whatIsSaidOnTheRadioGoesWithAFunctionAndIsNamedBefore() {
        others(RadioFormWalk::equipped);
        Page removed = press(browser.open(radio + FUNCTIONS), FUNCTIONS, "remove:function:1");
        assertThat(removed.document().select(".notice").text())
                .contains("its place on channel 5")
                .contains("the combination given up up with off");
        sendOn(removed, FUNCTIONS, Map.of());
        assertThat(build().radio().channels().get(1).functions()).containsExactly("pump");
        assertThat(build().radio().notNeeded()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            function.1.states; down, up, up; Two states have the same name.
            function.1.states; down, half, stowed; “up” is still used by the demands in Cruise, channel 5, the combination given up up with off. Take it out there first.
            function.1.kind; PROPORTIONAL; “down” is still used by the demands in Power on, Cruise, channel 5.
            function.0.kind; SWITCHED; “low end” is still used by channel 1.
            function.1.loss; sideways; This is one of: down, up.
            function.0.loss; off; This is one of: low end, middle, high end.
            function.0.decoded; ONE_STEP; a proportional function has none
            function.1.decoded; MAGIC; Please choose one from the list.
            function.1.otherwise; SMOKE; Please choose one from the list.
            function.1.criticality; NONE; Please choose one from the list.
            """)
    void whatCannotBeIsSaidAtItsFieldAndNothingIsLost(String field, String typed, String sentence) {
        others(RadioFormWalk::equipped);
        int before = number();
        Page again = sendOn(browser.open(radio + FUNCTIONS), FUNCTIONS, Map.of(field, typed));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, field)).contains(sentence);
        assertThat(FormWalk.value(again, "function.1.name")).isEqualTo("Gear");
        assertThat(number()).isEqualTo(before);
    }

    @Test
    void namesThatAreTooLongAndTooManyStatesAreRefused() {
        String longName = "x".repeat(201);
        Page again = send(
                FUNCTIONS,
                Map.of(
                        "function.0.name", longName,
                        "function.0.kind", "SWITCHED",
                        "function.0.criticality", "MISSION",
                        "function.0.states", "off\n" + longName,
                        "function.1.name", "y".repeat(200),
                        "function.1.kind", "SWITCHED",
                        "function.1.criticality", "MISSION",
                        "function.1.states", "1,2,3,4,5,6,7,8,9"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "function.0.name")).contains("at most 200 characters");
        assertThat(FormWalk.error(again, "function.0.states")).contains("at most 200 characters");
        assertThat(again.document().select("[id=function.1.name-error]")).isEmpty();
        assertThat(FormWalk.error(again, "function.1.states")).contains("at most 8 states, here are 9");
        assertThat(FormWalk.value(again, "function.0.name")).isEqualTo(longName);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            function.1.name; ; Please name the function.
            function.0.kind; DIGITAL; Please choose one from the list.
            function.0.states; up, down; has no states
            function.0.criticality; NONE; Please choose one from the list.
            function.1.states; ; two at least
            function.1.states; 'off, on​'; invisible characters
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
        Page form = browser.open(radio + FUNCTIONS);
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
        Page form = browser.open(radio + FUNCTIONS);
        send(FUNCTIONS, Map.of("function.0.name", "Theirs"));
        Page again = sendOn(form, FUNCTIONS, Map.of("function.0.name", "Mine"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "function.0.name")).isEqualTo("Mine");
        sendOn(again, FUNCTIONS, Map.of());
        assertThat(build().radio().functions().get(0).name()).isEqualTo("Mine");
    }
}
