package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.radio.RadioStart;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import dev.ledgerwing.web.team.TestMember;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** The radio page: what it shows, and what can be recorded on it. */
@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class RadioPageTest {

    private static final String BOTH_ON = "give-up:upper-camera=on,lower-camera=on@survey";

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    private final String code = "p" + UUID.randomUUID().toString().substring(0, 18);
    private final String radio = "/airframes/" + code + "/radio";
    private Browser browser;

    @BeforeEach
    void signIn() {
        browser = SignedInBrowser.at(port);
    }

    private Page opened(Build build) {
        desk.open(build, new Signature("Ines", ""));
        return browser.open(radio);
    }

    private Build head() {
        return readings.head(code).build();
    }

    private Page concede(Page from, String key, String why) {
        return browser.post(
                radio + "/concessions",
                from,
                Map.of("seen", String.valueOf(readings.head(code).revision().number()), "key", key, "reason", why));
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "godwit", "dunlin"})
    void everyDemoAirframeHasItsPage(String airframe) {
        Page page = browser.open("/airframes/" + airframe + "/radio");

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.document().select("[style], main script")).isEmpty();
        assertThat(page.document().select(".title-block [aria-current] .label").text())
                .isEqualTo("Radio");
        assertThat(page.document().select("#begin")).isEmpty();
        assertThat(page.document().select("section[aria-labelledby=plan] svg")).isNotEmpty();
        assertThat(page.document().select("section[aria-labelledby=grid] svg")).isNotEmpty();
        assertThat(page.document().select(".channels tbody tr")).hasSizeGreaterThanOrEqualTo(6);
        assertThat(page.document().select("section[aria-labelledby=loss] tbody tr"))
                .hasSize(readings.head(airframe).review().radio().onLoss().size());
    }

    @Test
    void anEmptyOneSaysWhereToBegin() {
        Page page = opened(RadioAirframes.blank(code));

        assertThat(page.document().select(".first-steps a").eachText())
                .containsExactly(
                        "The link", "The controls", "The functions", "The phases of a flight", "What each phase asks");
        assertThat(page.document().select("section[aria-labelledby=plan]")).isEmpty();
        assertThat(readings.head(code).review().verdict(Budget.RADIO)).isEqualTo(Verdict.UNKNOWN);
    }

    @ParameterizedTest
    @EnumSource
    void aStartIsOneRevisionAndCanBeTakenBack(RadioStart start) {
        Page after = browser.send(opened(RadioAirframes.blank(code)), radio + "/starts/" + start.code(), Map.of());

        assertThat(after.path()).isEqualTo(radio);
        assertThat(after.document().select(".impact .change").text()).contains(start.title());
        assertThat(head().radio().controls()).isNotEmpty();
        assertThat(after.document().select(".starts")).isEmpty();
        assertThat(after.document().select("main > .sentence").text())
                .contains("Nothing that the pilot commands is recorded yet.");
        assertThat(readings.head(code).review().verdict(Budget.RADIO)).isEqualTo(Verdict.UNKNOWN);

        browser.send(after, "/airframes/" + code + "/undo", Map.of());
        assertThat(head().radio().controls()).isEmpty();
        assertThat(head().radio().link()).isNull();
    }

    @Test
    void saysHowManyChannelsAreInUseAndHowFewWouldDo() {
        assertThat(browser.open("/airframes/dunlin/radio")
                        .document()
                        .select("main > .sentence")
                        .text())
                .endsWith("10 channels, 8 in use: fits, each function alone. With more sharing 7 would be enough.");
    }

    @Test
    void whatTakesTheFlightItselfOffTheRadioIsFoldedAway() {
        Document page = browser.open("/airframes/curlew/radio").document();

        assertThat(page.select("details .ways > li"))
                .isNotEmpty()
                .allSatisfy(way -> assertThat(way.text()).contains("the other path has to be proven first"));
        assertThat(page.select("section > .ways > li"))
                .isNotEmpty()
                .allSatisfy(way -> assertThat(way.text()).doesNotContain("has to be proven"));
    }

    @Test
    void aSqueezeIsExplainedAndEveryConcessionSaysWhatIsLost() {
        Document page = opened(RadioAirframes.squeezed(code)).document();

        assertThat(page.select("main > .sentence").text()).contains("1 channel, 2 needed: does not fit.");
        assertThat(page.select("section[aria-labelledby=because] li").text()).contains("Upper camera", "Lower camera");
        assertThat(page.select(".ways > li")).isNotEmpty().allSatisfy(way -> {
            assertThat(way.select(".loses").text()).isNotEmpty();
            assertThat(way.select("input[name=reason][required]")).hasSize(1);
        });
        assertThat(page.select("form[action$=/plan]")).isEmpty();
    }

    @Test
    void aConcessionWithoutAReasonIsNotRecorded() {
        Page refused = concede(opened(RadioAirframes.squeezed(code)), BOTH_ON, "  ");

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.document()
                        .select("li:has(input[value=" + BOTH_ON + "]) .error")
                        .text())
                .isEqualTo("Please say why, for those who ask later.");
        assertThat(refused.document().select("[aria-invalid=true]")).hasSize(1);
        assertThat(readings.head(code).revision().number()).isEqualTo(1);
    }

    @Test
    void aReasonThatIsTooLongIsKept() {
        String why = "because ".repeat(30);
        Page refused = concede(opened(RadioAirframes.squeezed(code)), BOTH_ON, why);

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.document().select("[aria-invalid=true]").val()).isEqualTo(why.strip());
        assertThat(readings.head(code).revision().number()).isEqualTo(1);
    }

    @Test
    void aConcessionThatIsNotOfferedIsNotFound() {
        Page squeeze = opened(RadioAirframes.squeezed(code));

        assertThat(concede(squeeze, "give-up:nothing", "why not").status()).isEqualTo(404);
        assertThat(readings.head(code).revision().number()).isEqualTo(1);
    }

    @Test
    void aConcessionKeepsWhoAndWhyAndLeadsToAPlan() {
        Page after = concede(opened(RadioAirframes.squeezed(code)), BOTH_ON, "One camera is enough over the bog");

        assertThat(after.path()).isEqualTo(radio);
        assertThat(head().radio().notNeeded()).singleElement().satisfies(given -> {
            assertThat(given.by()).isEqualTo(TestMember.NAME);
            assertThat(given.why()).isEqualTo("One camera is enough over the bog");
            assertThat(given.phases()).containsExactly("survey");
        });
        assertThat(readings.head(code).revision().reason()).isEqualTo("One camera is enough over the bog");
        assertThat(after.document().select("section[aria-labelledby=because]")).isEmpty();
        assertThat(after.document()
                        .select("section[aria-labelledby=given-up] tbody")
                        .text())
                .contains("Upper camera on and Lower camera on in Survey", TestMember.NAME);

        Page planned = browser.send(after, radio + "/plan", Map.of());
        assertThat(head().radio().channels())
                .singleElement()
                .satisfies(channel ->
                        assertThat(channel.functions()).containsExactlyInAnyOrder("upper-camera", "lower-camera"));
        assertThat(planned.document().select("section[aria-labelledby=couplings] li"))
                .isNotEmpty();
        assertThat(planned.document().select("section[aria-labelledby=plan]").text())
                .contains("Planning again would change nothing.")
                .contains("shared by 2 functions");

        browser.send(planned, "/airframes/" + code + "/undo", Map.of());
        assertThat(head().radio().channels()).isEmpty();
    }

    @Test
    void whatWasGivenUpCanBeAskedForAgain() {
        NotNeeded given = new NotNeeded(
                "N1",
                List.of("survey"),
                List.of(new FunctionState("upper-camera", "on"), new FunctionState("lower-camera", "on")),
                "Ines",
                "too heavy");
        Page page = opened(RadioAirframes.squeezed(code).withNotNeeded(List.of(given)));
        assertThat(page.document().select("section[aria-labelledby=because]")).isEmpty();

        Page after = browser.send(page, radio + "/given-up/N1/take-back", Map.of());

        assertThat(head().radio().notNeeded()).isEmpty();
        assertThat(after.document().select("section[aria-labelledby=because]")).hasSize(1);
        assertThat(browser.post(radio + "/given-up/N1/take-back", after, Map.of("seen", "2"))
                        .status())
                .isEqualTo(404);
    }

    @Test
    void aPlanThatIsFoundIsOnlyProposedUntilItIsRecorded() {
        Page page = opened(RadioAirframes.roomy(code));

        assertThat(page.document().select("section[aria-labelledby=plan]").text())
                .contains("A plan that fits", "Found, not recorded");
        assertThat(readings.head(code).review().verdict(Budget.RADIO)).isEqualTo(Verdict.UNKNOWN);

        Page after = browser.send(page, radio + "/plan", Map.of());

        assertThat(after.document().select(".impact .change").text()).isEqualTo("Channels planned");
        assertThat(head().radio().channels()).hasSize(2);
        assertThat(after.document().select("section[aria-labelledby=plan] h2").text())
                .isEqualTo("Channels");
    }

    @Test
    void aPlanIsNotRecordedOnTopOfAChangeItDoesNotKnow() {
        Page page = opened(RadioAirframes.roomy(code));
        browser.send(page, radio + "/plan", Map.of());
        Page late = browser.post(radio + "/plan", page, Map.of("seen", "1"));

        assertThat(late.status()).isEqualTo(200);
        assertThat(readings.head(code).revision().number()).isEqualTo(2);
    }

    @Test
    void nothingIsPlannedWhereNothingFits() {
        Page page = opened(RadioAirframes.squeezed(code));
        Page after = browser.post(radio + "/plan", page, Map.of("seen", "1"));

        assertThat(after.document().select(".notice.problem").text()).contains("no plan that fits");
        assertThat(head().radio().channels()).isEmpty();
    }
}
