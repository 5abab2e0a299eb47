package dev.ledgerwing.web.power;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the supply is judged by, and the day in the sun. */
class RulesAndDayFormTest extends PowerFormWalk {

    private static Map<String, String> moss() {
        return new HashMap<>(Map.ofEntries(
                Map.entry("place", "Moss"),
                Map.entry("latitude", "53.5° N"),
                Map.entry("longitude", "2,25 W"),
                Map.entry("elevation", "150 m"),
                Map.entry("date", "2026-06-21"),
                Map.entry("ahead", "+1"),
                Map.entry("air", "15 °C"),
                Map.entry("sky", "90"),
                Map.entry("chain", "85 %"),
                Map.entry("heading", ""),
                Map.entry("start", "5:30"),
                Map.entry("charge", "60")));
    }

    @Test
    void reservesAndLimitsAreSetAndLeftToTheirDefaults() {
        Page after = send(
                "/rules",
                Map.of(
                        "wire",
                        "30 %",
                        "controller",
                        "40",
                        "drop",
                        "3",
                        "wireWarmth",
                        "−5 °C",
                        "wanted",
                        "1.5 h",
                        "landing",
                        "6"));
        assertThat(after.path()).isEqualTo(power);
        assertThat(build().power().rules())
                .isEqualTo(new PowerRules(
                        null, 30.0, null, null, null, null, null, null, 40.0, 3.0, -5.0, 90.0, 6.0, null, null));
        Page form = browser.open(power + "/rules");
        assertThat(FormWalk.value(form, "wanted")).isEqualTo("90");
        assertThat(form.document().expectFirst("[id=controller-hint]").text()).contains("Empty: 50");
        assertThat(form.document().expectFirst("[id=coldest-hint]").text()).contains("Empty: −10");
        sendOn(
                form,
                "/rules",
                Map.of("wire", "", "controller", "", "drop", "", "wireWarmth", "", "wanted", "", "landing", ""));
        assertThat(build().power().rules()).isEqualTo(PowerRules.DEFAULT);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            source; 91; This is from 0 to 90
            wire; -1; This is from 0 to 90
            connector; x; is not a share
            fuse; 5 A; is not a share
            switch; 91; This is from 0 to 90
            sensor; 91; This is from 0 to 90
            diode; 91; This is from 0 to 90
            regulator; 91; This is from 0 to 90
            controller; 91; This is from 0 to 90
            drop; 0; This is from 0.1 to 50
            wireWarmth; 201; This is from −60 to 200
            wanted; -1; This is from 0 to 100000
            landing; soon; is not a time
            coldest; -81; This is from −80 to 60
            hottest; 151; This is from 0 to 150
            """)
    void rulesThatCannotBeAreRefusedAtTheirField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new RulesForm(), airframe("godwit"), Map.of());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void theColdestCellsAreColderThanTheHottest() {
        new Troubles(new RulesForm(), airframe("godwit"), Map.of("hottest", "20")).say("coldest", "25", "colder than");
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        Map<String, String> wrong = new HashMap<>();
        List.of("source", "wire", "connector", "fuse", "switch", "sensor", "diode", "regulator", "controller")
                .forEach(field -> wrong.put(field, "x"));
        List.of("drop", "wireWarmth", "wanted", "landing", "coldest", "hottest")
                .forEach(field -> wrong.put(field, "y"));
        refusedEverywhere("/rules", wrong);
        Map<String, String> day = moss();
        day.remove("place");
        day.replaceAll((field, typed) -> "x");
        refusedEverywhere("/day", day);
    }

    @Test
    void rulesOfTwoAreMergedAndClashWhereTheyMeet() {
        Page form = browser.open(power + "/rules");
        send("/rules", Map.of("wire", "25"));
        sendOn(form, "/rules", Map.of("fuse", "35"));
        assertThat(build().power().rules().wireReservePercent()).isEqualTo(25);
        assertThat(build().power().rules().fuseReservePercent()).isEqualTo(35);
        Page again = sendOn(form, "/rules", Map.of("wire", "30"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "wire")).isEqualTo("30");
        assertThat(FormWalk.value(again, "fuse")).isEqualTo("35");
    }

    @Test
    void aDayInTheSunIsEnteredEditedAndRemoved() {
        others(build -> build.withPhases(List.of(new Phase("cruise", "Cruise", null, true, null, List.of(), true))));
        Page form = browser.open(power + "/day");
        assertThat(form.document().select("[formaction]")).isEmpty();
        Page after = sendOn(form, "/day", withPhase());
        assertThat(after.path()).isEqualTo(power);
        assertThat(build().power().day())
                .isEqualTo(new SolarDay(
                        "Moss", 53.5, -2.25, LocalDate.of(2026, 6, 21), 1, 150, 15, 90, 85, null, 5.5, 60, "cruise"));
        assertThat(title()).isEqualTo("Day in the sun entered");

        Page again = browser.open(power + "/day");
        assertThat(FormWalk.value(again, "start")).isEqualTo("5:30");
        assertThat(FormWalk.value(again, "longitude")).isEqualTo("−2.25");
        sendOn(again, "/day", Map.of("heading", "270", "ahead", "−3:30"));
        assertThat(build().power().day())
                .isEqualTo(new SolarDay(
                        "Moss",
                        53.5,
                        -2.25,
                        LocalDate.of(2026, 6, 21),
                        -3.5,
                        150,
                        15,
                        90,
                        85,
                        270.0,
                        5.5,
                        60,
                        "cruise"));
        remove("/day");
        assertThat(build().power().day()).isNull();
    }

    private static Map<String, String> withPhase() {
        Map<String, String> day = moss();
        day.put("phase", "cruise");
        return day;
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            latitude; ; Please give this figure.
            latitude; 91; This is from −90 to 90
            latitude; 53 E; is not a latitude
            longitude; 181; This is from −180 to 180
            elevation; -501; This is from −500 to 30000
            date; ; Please give the day.
            date; 2026-02-30; is not a day
            date; 21.6.26; is not a day
            date; 1949-12-31; outside the years
            ahead; 15; is not a number of hours
            ahead; ; how far the clock is ahead
            air; 61; This is from −90 to 60
            sky; 121; This is from 0 to 120
            chain; 0; This is from 1 to 100
            heading; 361; This is from 0 to 360
            start; 24:01; is not a time
            start; dawn; is not a time
            start; ; Please give when it begins.
            charge; 101; This is from 0 to 100
            phase; gone; not there any more
            """)
    void aDayThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new DayForm(LocalDate.of(2026, 1, 1)), airframe("godwit"), moss());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void twoWhoSetTheSameFigureOfTheDayClash() {
        send("/day", moss());
        Page form = browser.open(power + "/day");
        send("/day", Map.of("sky", "80"));
        Page again = sendOn(form, "/day", Map.of("sky", "70"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "sky")).isEqualTo("70");
        assertThat(browser.open(power + "/nothing").status()).isEqualTo(404);
        assertThat(browser.open(power + "/nothing/nothing").status()).isEqualTo(404);
    }
}
