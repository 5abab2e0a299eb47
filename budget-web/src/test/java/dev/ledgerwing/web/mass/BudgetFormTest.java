package dev.ledgerwing.web.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Revision;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import dev.ledgerwing.web.team.TestMember;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;

/** Setting target, ceiling, reserve and stage. */
@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class BudgetFormTest {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    @Autowired
    MockMvc mvc;

    private final String code = "f" + UUID.randomUUID().toString().substring(0, 18);
    private final String form = "/airframes/" + code + "/mass/budget";
    private Browser browser;

    @BeforeEach
    void openAnAirframe() {
        browser = SignedInBrowser.at(port);
        desk.open(Airframes.withTwoParts(code, Airframes.target(6800)), new Signature("Ines", ""));
    }

    @AfterEach
    void readGramsAgain() {
        read(UnitSystem.GRAM_MILLIMETRE);
    }

    private void read(UnitSystem units) {
        browser.post("/units", browser.open("/"), Map.of("units", units.name()));
    }

    private Page set(Map<String, String> typed) {
        return browser.send(browser.open(form), form, typed);
    }

    private MassBudget budget() {
        return readings.head(code).build().budget();
    }

    private Revision newest() {
        return readings.head(code).revision();
    }

    private void others(String title, Deed.Wanted wanted) {
        Outcome outcome =
                desk.change(new Seen(code, newest().number()), Deed.fitting(title, wanted), new Signature("Ines", ""));
        assertThat(outcome).isInstanceOf(Outcome.Landed.class);
    }

    private static MassBudget withTarget(MassBudget old, double grams) {
        return new MassBudget(Mass.ofGrams(grams), old.ceilingMass(), old.ceilingIs(), old.reservePercent());
    }

    private static Build atStage(Build build, Stage stage) {
        Airframe old = build.airframe();
        return build.withAirframe(new Airframe(old.code(), old.name(), old.purpose(), stage, old.datum()));
    }

    private static String value(Page page, String field) {
        return page.document().expectFirst("#budget [name=" + field + "]").val();
    }

    @Test
    void aTargetInAnyUnitIsStoredAndAnsweredAtOnce() {
        Page after = set(Map.of("target", "7 kg", "reason", "the pump is heavier"));

        assertThat(after.path()).isEqualTo("/airframes/" + code + "/mass");
        assertThat(after.document().expectFirst(".impact .change").text()).isEqualTo("Target 6800 → 7000\u2009g");
        assertThat(budget().targetMass()).isEqualTo(Mass.ofGrams(7000));
        assertThat(newest().title()).isEqualTo("Target 6800 → 7000\u2009g");
        assertThat(newest().reason()).isEqualTo("the pump is heavier");
        assertThat(newest().author()).isEqualTo(TestMember.NAME);
    }

    @Test
    void everythingIsSetInOneRevision() {
        set(Map.of(
                "stage", "BUILD",
                "target", "15,5 lb",
                "reserve", "7,5 %",
                "ceiling", "25kg",
                "ceilingIs", "AT_MOST"));

        assertThat(newest().number()).isEqualTo(2);
        assertThat(budget())
                .isEqualTo(
                        new MassBudget(Mass.ofGrams(15.5 * 453.59237), Mass.ofGrams(25_000), CeilingIs.AT_MOST, 7.5));
        assertThat(readings.head(code).build().airframe().stage()).isEqualTo(Stage.BUILD);
    }

    @Test
    void emptyFieldsTakeTargetCeilingAndReserveAway() {
        set(Map.of("ceiling", "9000", "reserve", "0"));
        assertThat(budget().reservePercent()).isEqualTo(0.0);
        set(Map.of("target", "", "ceiling", " ", "reserve", ""));
        assertThat(budget()).isEqualTo(new MassBudget(null, null, null, null));
    }

    @Test
    void undoTakesItBack() {
        Page after = set(Map.of("target", "7000"));
        Page undone = browser.send(after, "/airframes/" + code + "/undo", Map.of());
        assertThat(undone.path()).isEqualTo("/airframes/" + code + "/mass");
        assertThat(budget().targetMass()).isEqualTo(Mass.ofGrams(6800));
    }

    @Test
    void aFormSentAsItWasChangesNothing() {
        Page after = set(Map.of());
        assertThat(after.document().expectFirst(".impact").text()).contains("nothing was written");
        assertThat(newest().number()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            target  | abc        | This is not a mass such as 85, 1.2 kg or 3.5 oz: “abc”.
            target  | -3         | A target is more than 0 g and at most 1000 kg
            target  | 0          | A target is more than 0 g and at most 1000 kg
            target  | 1e-9       | A target is more than 0 g and at most 1000 kg
            target  | 1e400      | This is not a mass
            target  | NaN        | This is not a mass
            target  | Infinity   | This is not a mass
            target  | 7 stone    | This is not a mass
            target  | 1001 kg    | A target is more than 0 g and at most 1000 kg
            target  | <b>7</b>   | This is not a mass
            target  | 9e8 kg     | too large to be a mass here
            ceiling | abc        | This is not a mass
            ceiling | -25kg      | A ceiling is more than 0 g and at most 1000 kg
            ceiling | 0          | A ceiling is more than 0 g and at most 1000 kg
            reserve | abc        | This is not a number such as
            reserve | -3         | A reserve is from 0 to 90 %
            reserve | 90.01      | A reserve is from 0 to 90 %
            reserve | 1e400      | This is not a number
            reserve | NaN        | This is not a number
            reason  | a\u0000b   | leave out line breaks and invisible characters
            """)
    void keepsWhatWasTypedAndSaysWhatIsWrong(String field, String typed, String sentence) {
        Page again = set(Map.of(field, typed));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document().select("#" + field + "-error").text()).contains(sentence);
        assertThat(again.document().select("[name=" + field + "]").attr("aria-invalid"))
                .isEqualTo("true");
        if (!typed.contains("\u0000")) {
            assertThat(value(again, field)).isEqualTo(typed);
        }
        assertThat(again.document().select("b")).isEmpty();
        assertThat(newest().number()).isEqualTo(1);
    }

    @Test
    void saysEverythingThatIsWrongAtOnce() {
        Page again = set(Map.of("target", "abc", "reserve", "-3", "ceiling", "1e400"));
        assertThat(again.document().select("#budget .error")).hasSize(3);
    }

    @Test
    void aLongReasonIsKeptAndOneTooLongIsRefused() {
        String long300 = "because ".repeat(40).strip().substring(0, 300);
        set(Map.of("target", "7000", "reason", long300));
        assertThat(newest().reason()).isEqualTo(long300);

        String long501 = "x".repeat(501);
        Page again = set(Map.of("target", "7100", "reason", long501));
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document().select("#reason-error").text()).isEqualTo("A reason has at most 500 characters.");
        assertThat(value(again, "reason")).isEqualTo(long501);
        assertThat(value(again, "target")).isEqualTo("7100");
    }

    @ParameterizedTest
    @ValueSource(strings = {"stage", "ceilingIs"})
    void aChoiceThatDoesNotExistIsAskedForAgain(String field) {
        Page page = browser.open(form);
        Map<String, String> typed = new HashMap<>(Map.of("seen", "1", "target", "7000", "ceiling", "9000"));
        typed.putAll(Map.of("stage", "BUILD", "ceilingIs", "BELOW"));
        typed.put(field, "NEVER");
        Page again = browser.post(form, page, typed);
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document().select("#" + field + "-error").text()).startsWith("Please ");
        assertThat(newest().number()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"'', 422", "abc, 422", "99999999999, 422", "99, 404", "0, 404", "-1, 404"})
    void aRevisionThatWasNeverSeenIsRefused(String seen, int status) {
        Page again = browser.post(form, browser.open(form), Map.of("seen", seen, "target", "7000", "stage", "DESIGN"));
        assertThat(again.status()).isEqualTo(status);
        assertThat(newest().number()).isEqualTo(1);
    }

    @Test
    void whatOthersDidElsewhereMeanwhileGoesTogether() {
        Page page = browser.open(form);
        others("stage", build -> atStage(build, Stage.BUILD));

        Page after = browser.send(page, form, Map.of("target", "7000"));

        assertThat(after.document().expectFirst(".impact").text()).contains("Merged with revision 2 by Ines.");
        assertThat(budget().targetMass()).isEqualTo(Mass.ofGrams(7000));
        assertThat(readings.head(code).build().airframe().stage()).isEqualTo(Stage.BUILD);
    }

    @Test
    void aClashIsShownWithWhatWasTypedAndTheNextTryTakesNothingElseBack() {
        Page page = browser.open(form);
        others("target and stage", build -> atStage(build, Stage.BUILD).withBudget(withTarget(build.budget(), 6900)));

        Page clash = browser.send(page, form, Map.of("target", "7000", "reason", "pump"));

        assertThat(clash.status()).isEqualTo(422);
        assertThat(clash.document()
                        .select("#airframe .notice.problem[role=alert]")
                        .text())
                .isEqualTo("Mass budget, target: set differently on both sides."
                        + " Ines made revision 2 in the meantime (target and stage)."
                        + " What you typed is still here: save it again to have it so, or cancel to leave it.");
        assertThat(value(clash, "seen")).isEqualTo("2");
        assertThat(value(clash, "target")).isEqualTo("7000");
        assertThat(value(clash, "reason")).isEqualTo("pump");
        assertThat(clash.document().select("#stage option[selected]").val()).isEqualTo("BUILD");
        assertThat(newest().number()).isEqualTo(2);

        browser.send(clash, form, Map.of());
        assertThat(budget().targetMass()).isEqualTo(Mass.ofGrams(7000));
        assertThat(readings.head(code).build().airframe().stage()).isEqualTo(Stage.BUILD);
    }

    @Test
    void aFormThatWasWrongGoesOnFromTheRevisionItWasMadeFrom() {
        Page page = browser.open(form);
        others("target", build -> build.withBudget(withTarget(build.budget(), 6900)));
        Page wrong = browser.send(page, form, Map.of("reserve", "abc"));
        assertThat(value(wrong, "seen")).isEqualTo("1");

        browser.send(wrong, form, Map.of("reserve", "8"));
        assertThat(budget()).isEqualTo(new MassBudget(Mass.ofGrams(6900), null, null, 8.0));
    }

    @Test
    void lookingAtGramsInOuncesDoesNotRoundThem() {
        read(UnitSystem.OUNCE_INCH);
        Page page = browser.open(form);
        assertThat(value(page, "target")).isEqualTo("239.86");
        assertThat(page.document().select("label[for=target]").text()).endsWith(", oz");

        browser.send(page, form, Map.of("reserve", "8"));
        assertThat(budget()).isEqualTo(new MassBudget(Mass.ofGrams(6800), null, null, 8.0));

        set(Map.of("target", "240"));
        assertThat(budget().targetMass()).isEqualTo(Mass.ofGrams(240 * 28.349523125));
    }

    @Test
    void aNumberCountsInTheUnitsTheFormWasShownIn() {
        read(UnitSystem.OUNCE_INCH);
        Page page = browser.open(form);
        read(UnitSystem.GRAM_MILLIMETRE);

        browser.send(page, form, Map.of("target", "250", "ceiling", "abc"));
        Page wrong = browser.send(page, form, Map.of("target", "250", "ceiling", "abc"));
        assertThat(wrong.document().select("label[for=target]").text()).endsWith(", oz");
        browser.send(wrong, form, Map.of("ceiling", ""));
        assertThat(budget().targetMass()).isEqualTo(Mass.ofGrams(250 * 28.349523125));
    }

    @Test
    void inPlaceThePartOfThePageComesBackWithTheStrip() throws Exception {
        MockHttpServletResponse answer = inPlace("7000");
        assertThat(answer.getStatus()).isEqualTo(200);
        Document part = Jsoup.parse(answer.getContentAsString());
        assertThat(part.select("#airframe .impact .change").text()).isEqualTo("Target 6800 → 7000\u2009g");
        assertThat(part.select(".top-bar, #budget")).isEmpty();
    }

    @Test
    void inPlaceAFormThatIsWrongComesBackAsItWasTyped() throws Exception {
        MockHttpServletResponse answer = inPlace("abc");
        assertThat(answer.getStatus()).isEqualTo(422);
        Document part = Jsoup.parse(answer.getContentAsString());
        assertThat(part.expectFirst("#airframe #budget [name=target]").val()).isEqualTo("abc");
        assertThat(part.select(".top-bar")).isEmpty();
    }

    private MockHttpServletResponse inPlace(String target) throws Exception {
        return mvc.perform(post(form)
                        .header("HX-Request", "true")
                        .param("seen", "1")
                        .param("stage", "DESIGN")
                        .param("target", target)
                        .with(TestMember.mara())
                        .with(csrf()))
                .andReturn()
                .getResponse();
    }
}
