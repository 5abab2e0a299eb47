package dev.ledgerwing.web.power;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The phases of a flight. */
class PhasesFormTest extends PowerFormWalk {

    private static final String PHASES = "/phases";

    private static Map<String, String> two() {
        return Map.of(
                "phase.0.name", "Climb out",
                "phase.0.minutes", "3",
                "phase.0.loadCase", "all-up",
                "phase.1.name", "Cruise",
                "phase.1.stretch", "on",
                "phase.1.charging", "on");
    }

    @Test
    void phasesAreNamedFromNothing() {
        Page after = send(PHASES, two());
        assertThat(after.path()).isEqualTo(power);
        assertThat(build().phases())
                .containsExactly(
                        new Phase("climb-out", "Climb out", 3.0, false, "all-up", List.of(), false),
                        new Phase("cruise", "Cruise", null, true, null, List.of(), true));
    }

    @Test
    void aPhaseCanFollowOneThatIsNotSavedYet() {
        Page form = browser.open(power + PHASES);
        Page added = sendOn(form, PHASES, with(two(), "row", "add:phase"));
        assertThat(FormWalk.value(added, "phase.0.code")).isEqualTo("climb-out");
        sendOn(added, PHASES, Map.of("phase.0.next", "cruise"));
        assertThat(build().phases()).hasSize(2);
        assertThat(build().phases().get(0).next()).containsExactly("cruise");
    }

    private static Map<String, String> with(Map<String, String> typed, String field, String text) {
        Map<String, String> more = new HashMap<>(typed);
        more.put(field, text);
        return more;
    }

    @Test
    void aCodeStaysWhenAPhaseIsRenamedAndMoved() {
        send(PHASES, two());
        Page moved = press(browser.open(power + PHASES), PHASES, "later:phase:0");
        assertThat(FormWalk.value(moved, "phase.1.minutes")).isEqualTo("3");
        sendOn(moved, PHASES, Map.of("phase.1.name", "Steep climb"));
        assertThat(build().phases()).extracting(Phase::code).containsExactly("cruise", "climb-out");
        assertThat(build().phases().get(1).name()).isEqualTo("Steep climb");
    }

    @Test
    void aPhaseGoesWithWhatMentionsItAndThisIsSaidBefore() {
        send(PHASES, two());
        others(build -> build.withPhases(List.of(
                        build.phases().get(0).withNext(List.of("cruise")),
                        build.phases().get(1)))
                .withLines(build.lines().stream()
                        .map(line -> line.withElectrical(List.of(new ElectricalLoad(
                                null,
                                ElectricalLoad.Draws.CONSTANT_CURRENT,
                                0.1,
                                null,
                                null,
                                null,
                                Map.of("cruise", 0.5),
                                null,
                                null))))
                        .toList()));
        Page removed = press(browser.open(power + PHASES), PHASES, "remove:phase:1");
        assertThat(removed.document().select(".notice").text())
                .contains(
                        "“Cruise” goes when you save, and with it the duty of 3 parts in it, that it follows Climb out.");
        assertThat(build().phases()).hasSize(2);

        sendOn(removed, PHASES, Map.of());
        assertThat(title()).isEqualTo("Phases edited, removed: Cruise");
        assertThat(build().phases()).extracting(Phase::code).containsExactly("climb-out");
        assertThat(build().phases().get(0).next()).isEmpty();
        assertThat(build().lines())
                .allSatisfy(line ->
                        assertThat(line.electrical().get(0).dutyByPhase()).isEmpty());
    }

    @Test
    void aNewPhaseOfARemovedNameIsAnotherPhase() {
        send(PHASES, two());
        Page removed = press(browser.open(power + PHASES), PHASES, "remove:phase:1");
        sendOn(removed, PHASES, Map.of("phase.1.name", "Cruise"));
        assertThat(build().phases()).extracting(Phase::code).containsExactly("climb-out", "cruise-2");
    }

    @Test
    void whatOthersAddedMeanwhileIsNotLost() {
        send(PHASES, two());
        Page form = browser.open(power + PHASES);
        others(build -> build.withPhases(List.of(
                new Phase("taxi", "Taxi", 1.0, false, null, List.of(), false),
                build.phases().get(0),
                build.phases().get(1))));
        sendOn(form, PHASES, Map.of("phase.0.name", "Steep climb"));
        assertThat(build().phases()).extracting(Phase::name).containsExactlyInAnyOrder("Taxi", "Steep climb", "Cruise");
    }

    @Test
    void afterAClashThePhasesOfOthersAreNotLost() {
        send(PHASES, two());
        Page form = browser.open(power + PHASES);
        others(build -> build.withPhases(List.of(
                new Phase("taxi", "Taxi", 1.0, false, null, List.of(), false),
                new Phase("climb-out", "Their climb", 3.0, false, "all-up", List.of(), false),
                build.phases().get(1))));
        Page again = sendOn(form, PHASES, Map.of("phase.0.name", "Steep climb"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "phase.0.name")).isEqualTo("Steep climb");
        sendOn(again, PHASES, Map.of());
        assertThat(build().phases()).extracting(Phase::name).containsExactlyInAnyOrder("Taxi", "Steep climb", "Cruise");
        assertThat(build().phases()).extracting(Phase::code).contains("climb-out");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            phase.0.name; ; Please name the phase.
            phase.0.minutes; -1; This is from 0 to 100000
            phase.0.minutes; soon; is not a time
            phase.0.minutes; 5 A; is not a time
            phase.0.loadCase; gone; not there any more
            phase.1.minutes; 100001; This is from 0 to 100000
            """)
    void aPhaseThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new PhasesForm(), airframe("godwit"), two());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void onlyOnePhaseStretches() {
        Troubles troubles = new Troubles(new PhasesForm(), airframe("godwit"), with(two(), "phase.0.stretch", "on"));
        troubles.say("phase.1.stretch", "on", "Only one phase can take up");
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        refusedEverywhere(
                PHASES,
                Map.of("phase.0.name", "", "phase.0.minutes", "x", "phase.1.name", "", "phase.1.minutes", "-1"));
    }

    @Test
    void aRowLeftEmptyIsNoPhase() {
        Page form = press(browser.open(power + PHASES), PHASES, "add:phase");
        sendOn(form, PHASES, with(two(), "phase.2.name", ""));
        assertThat(build().phases()).hasSize(2);
    }
}
