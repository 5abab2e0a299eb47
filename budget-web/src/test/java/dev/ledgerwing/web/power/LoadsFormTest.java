package dev.ledgerwing.web.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one part draws and serves, and the duty of all that hangs on a rail. */
class LoadsFormTest extends PowerFormWalk {

    private static final String SERVO = "/loads/L3";

    @BeforeEach
    void addRailsPhasesAndFunctions() {
        others(LoadsFormTest::prepared);
    }

    private static Build prepared(Build build) {
        return build.withRails(List.of(
                        new Rail("main", "Main", 5.0, null, null, false),
                        new Rail("servos", "Servos", 6.0, null, null, false)))
                .withPhases(List.of(
                        new Phase("climb", "Climb", 3.0, false, null, List.of(), false),
                        new Phase("cruise", "Cruise", null, true, null, List.of(), false)))
                .withFunctions(List.of(function("aileron"), function("gear")));
    }

    private static RadioFunction function(String code) {
        return new RadioFunction(
                code, code, RadioFunction.Kind.PROPORTIONAL, List.of(), RadioFunction.Criticality.FLIGHT, false);
    }

    private static Map<String, String> servo() {
        return new HashMap<>(Map.ofEntries(
                Map.entry("load.0.rail", "servos"),
                Map.entry("load.0.draws", "CONSTANT_POWER"),
                Map.entry("load.0.typical", "120 mA"),
                Map.entry("load.0.peak", "1,5 A"),
                Map.entry("load.0.min", "4.8 V"),
                Map.entry("load.0.max", "8,4"),
                Map.entry("load.0.group", "flaps"),
                Map.entry("load.0.lead.awg", "26"),
                Map.entry("load.0.lead.length", "60 cm"),
                Map.entry("load.0.lead.conductors", "3"),
                Map.entry("load.0.lead.routing", "BUNDLE"),
                Map.entry("load.0.duty.climb", "50 %"),
                Map.entry("serves", "aileron")));
    }

    private PartLine line() {
        return build().line("L3").orElseThrow();
    }

    @Test
    void aPartSaysWhatItDrawsAndServes() {
        Page after = send(SERVO, servo());

        assertThat(after.path()).isEqualTo(power);
        assertThat(title()).isEqualTo("What Aileron servo draws and serves");
        WireRun lead = new WireRun(26, Length.ofMm(600), 3, WireRun.Routing.BUNDLE, null);
        assertThat(line().electrical())
                .containsExactly(new ElectricalLoad(
                        "servos", Draws.CONSTANT_POWER, 0.12, 1.5, 4.8, 8.4, Map.of("climb", 0.5), "flaps", lead));
        assertThat(line().serves()).containsExactly("aileron");

        Page form = browser.open(power + SERVO);
        assertThat(form.text()).contains("there are 2 of them");
        assertThat(FormWalk.value(form, "load.0.duty.climb")).isEqualTo("50");
        assertThat(FormWalk.ticked(form, "serves")).containsExactly("aileron");
        assertThat(form.document().select("[name=load.0.rail] [selected]").val())
                .isEqualTo("servos");
    }

    @Test
    void whatIsNotKnownStaysEmptyAndHangsOnNoRailYet() {
        Page form = press(browser.open(power + SERVO), SERVO, "add:load");
        sendOn(form, SERVO, Map.of("load.0.rail", "-"));
        assertThat(line().electrical())
                .containsExactly(
                        new ElectricalLoad(null, Draws.CONSTANT_CURRENT, null, null, null, null, Map.of(), null, null));
        Page again = browser.open(power + SERVO);
        assertThat(again.document().select("[name=load.0.rail] [selected]").text())
                .isEqualTo("no rail yet");
    }

    @Test
    void rowsComeAndGoAndKeepWhatWasTyped() {
        Map<String, String> more = servo();
        more.put("row", "add:load");
        Page added = send(SERVO, more);
        assertThat(FormWalk.value(added, "load.0.lead.length")).isEqualTo("60 cm");
        assertThat(FormWalk.ticked(added, "serves")).containsExactly("aileron");
        Page second = sendOn(
                added,
                SERVO,
                Map.of(
                        "load.1.rail",
                        "main",
                        "load.1.typical",
                        "0.2",
                        "load.1.duty.cruise",
                        "10",
                        "row",
                        "remove:load:0"));
        assertThat(FormWalk.value(second, "load.0.typical")).isEqualTo("0.2");
        assertThat(FormWalk.value(second, "load.0.duty.cruise")).isEqualTo("10");
        assertThat(second.document().select("[name=load.1.rail]")).isEmpty();
        assertThat(line().electrical()).isEmpty();
        sendOn(second, SERVO, Map.of());
        assertThat(line().electrical()).extracting(ElectricalLoad::rail).containsExactly("main");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            load.0.rail; gone; not there any more
            load.0.draws; WATER; Please choose one from the list.
            load.0.typical; -1; This is from 0 to 1000
            load.0.typical; 5 V; is not a current
            load.0.typical; 2; The peak is at least the typical current.
            load.0.peak; 2001; This is from 0 to 2000
            load.0.min; 9; the smaller of the two
            load.0.max; 1001; This is from 0 to 1000
            load.0.group; this is a group with a name that is much too long; This has at most 40 characters.
            load.0.lead.awg; ; Please choose how thick
            load.0.lead.length; ; Please give how long
            load.0.lead.length; 200 m; This is from 0 mm to 100 m.
            load.0.lead.conductors; 1; This is a whole number from 2 to 100.
            load.0.lead.insulation; 20; This is from 40 to 600
            load.0.duty.climb; 101; This is from 0 to 100
            load.0.duty.cruise; often; is not a share
            """)
    void aLoadThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Map<String, String> good = servo();
        Troubles troubles = new Troubles(new LoadsForm("L3"), prepared(airframe("godwit")), good);
        troubles.sayNothingOfWhatIsGood();
        if (sentence.contains("The peak")) {
            good.put("load.0.typical", typed);
            troubles.say("load.0.peak", "1,5", sentence);
        } else {
            troubles.say(field, typed, sentence);
        }
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        Map<String, String> wrong = servo();
        wrong.keySet().removeIf(field -> field.matches(".*(rail|draws|group|routing|serves)"));
        wrong.replaceAll((field, typed) -> field.endsWith("awg") ? "" : "x");
        refusedEverywhere(SERVO, wrong);
    }

    @Test
    void aFunctionThatIsNotThereIsRefusedWithTheReason() {
        Page again = send(SERVO, Map.of("serves", "yaw"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document().select(".notice.problem").text()).contains("There is no function “yaw”");
    }

    @Test
    void twoWhoChangeTheLoadsClashAndNothingTypedIsLost() {
        send(SERVO, servo());
        Page form = browser.open(power + SERVO);
        others(build -> build.withLines(build.lines().stream()
                .map(line -> line.withElectrical(List.of()))
                .toList()));
        Page again = sendOn(form, SERVO, Map.of("load.0.peak", "2 A"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "load.0.peak")).isEqualTo("2 A");
        assertThat(FormWalk.value(again, "load.0.typical")).isEqualTo("0.12");
        sendOn(again, SERVO, Map.of());
        assertThat(line().electrical()).extracting(ElectricalLoad::peakA).containsExactly(2.0);
    }

    @Test
    void withoutFunctionsThePageLeadsToNamingThem() {
        others(build -> build.withFunctions(List.of()));
        Page form = browser.open(power + SERVO);
        assertThat(form.document().select("a[href=/airframes/" + code + "/radio/functions]"))
                .hasSize(1);
        assertThat(browser.open(power + "/loads/L99").status()).isEqualTo(404);
    }

    private void hangTwoOnTheServoRail() {
        send(SERVO, servo());
        send("/loads/L2", Map.of("load.0.rail", "servos", "load.0.typical", "0.1"));
    }

    @Test
    void theDutyOfARailIsSavedAtOnce() {
        hangTwoOnTheServoRail();
        int before = number();
        Page form = browser.open(power + "/duty/servos");
        assertThat(FormWalk.value(form, "duty-L3-0.climb")).isEqualTo("50");
        assertThat(form.text()).contains("Receiver").doesNotContain("Flight pack");
        sendOn(
                form,
                "/duty/servos",
                Map.of("duty-L3-0.climb", "", "duty-L3-0.cruise", "12,5 %", "duty-L2-0.climb", "0"));

        assertThat(number()).isEqualTo(before + 1);
        assertThat(title()).isEqualTo("Duty on rail Servos");
        assertThat(line().electrical().get(0).dutyByPhase()).isEqualTo(Map.of("cruise", 0.125));
        assertThat(build().line("L2").orElseThrow().electrical().get(0).dutyByPhase())
                .isEqualTo(Map.of("climb", 0.0));
        sendOn(browser.open(power + "/duty/servos"), "/duty/servos", Map.of());
        assertThat(number()).isEqualTo(before + 1);
    }

    @Test
    void aDutyThatCannotBeIsSaidInItsCell() {
        hangTwoOnTheServoRail();
        refusedEverywhere(
                "/duty/servos",
                Map.of(
                        "duty-L3-0.climb",
                        "101",
                        "duty-L3-0.cruise",
                        "-1",
                        "duty-L2-0.climb",
                        "x",
                        "duty-L2-0.cruise",
                        "5 A"));
    }

    @Test
    void othersMayChangeAnotherPartMeanwhile() {
        hangTwoOnTheServoRail();
        Page form = browser.open(power + "/duty/servos");
        send("/loads/L2", Map.of("load.0.typical", "0.3"));
        sendOn(form, "/duty/servos", Map.of("duty-L3-0.cruise", "20"));
        assertThat(line().electrical().get(0).dutyByPhase()).containsEntry("cruise", 0.2);
        assertThat(build().line("L2").orElseThrow().electrical().get(0).typicalA())
                .isEqualTo(0.3);
    }

    @Test
    void twoWhoChangeTheDutyOfOnePartClash() {
        hangTwoOnTheServoRail();
        Page form = browser.open(power + "/duty/servos");
        send("/loads/L3", Map.of("load.0.duty.cruise", "30"));
        Page again = sendOn(form, "/duty/servos", Map.of("duty-L3-0.cruise", "20"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "duty-L3-0.cruise")).isEqualTo("20");
        sendOn(again, "/duty/servos", Map.of());
        assertThat(line().electrical().get(0).dutyByPhase()).containsEntry("cruise", 0.2);
    }

    @Test
    void aRailWithoutPhasesOrLoadsSaysWhereToBegin() {
        assertThat(browser.open(power + "/duty/main").text()).contains("Nothing hangs on this rail yet");
        others(build -> build.withPhases(List.of()));
        assertThat(browser.open(power + "/duty/main").text()).contains("There are no phases yet");
        assertThat(browser.open(power + "/duty/nothing").status()).isEqualTo(404);
    }

    @Test
    void sharesSurviveBeingShownAsPerCent() {
        for (double share : new double[] {0.07, 0.29, 1.0 / 3, 0.57, 0.001}) {
            assertThat(LoadFields.share(LoadFields.percent(share))).isCloseTo(share, within(1e-10));
        }
        assertThat(LoadFields.share(LoadFields.percent(0.07))).isEqualTo(0.07);
        assertThat(LoadFields.percent(0.07)).isEqualTo(7);
    }
}
