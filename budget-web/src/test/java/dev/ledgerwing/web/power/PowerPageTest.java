package dev.ledgerwing.web.power;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.power.PowerStart;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
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

/** The power page, and the ready-made supplies to begin with. */
@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class PowerPageTest {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    private final String code = "p" + UUID.randomUUID().toString().substring(0, 18);
    private final String power = "/airframes/" + code + "/power";
    private Browser browser;

    @BeforeEach
    void signIn() {
        browser = SignedInBrowser.at(port);
    }

    private void openBlank() {
        desk.open(
                Build.blank(
                        new Airframe(code, "Airframe " + code, null, Stage.DESIGN, "nose tip"),
                        new MassBudget(Mass.ofGrams(2000), null, null, null)),
                new Signature("Ines", ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "godwit", "dunlin"})
    void everyDemoAirframeHasItsPage(String airframe) {
        Page page = browser.open("/airframes/" + airframe + "/power");

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.document().select("[style], main script")).isEmpty();
        assertThat(page.document().select(".title-block [aria-current] .label").text())
                .isEqualTo("Power");
        assertThat(page.document().select("#begin")).isEmpty();
        assertThat(page.document().select("section[aria-labelledby=feeds] svg.balance-drawing"))
                .hasSize(2);
        assertThat(page.document().select("section[aria-labelledby=energy] svg.balance-drawing"))
                .hasSize(2);
        assertThat(page.text()).contains("Flight pack", "Motor controller", "Avionics, 5 V", "Estimates are estimates");
    }

    @Test
    void anEmptyOneSaysWhereToBegin() {
        openBlank();
        Page page = browser.open(power);

        assertThat(page.text()).contains("Nothing says yet where the current comes from");
        assertThat(page.document().select(".starts button").eachText())
                .containsExactly(
                        "One pack, one regulator", "Two packs through diodes", "Pack, regulator and solar tracker");
        assertThat(readings.head(code).review().verdict(Budget.POWER)).isEqualTo(Verdict.UNKNOWN);
    }

    @ParameterizedTest
    @EnumSource
    void aStartIsOneRevisionAndCanBeTakenBack(PowerStart start) {
        openBlank();
        Page after = browser.send(browser.open(power), power + "/starts/" + start.code(), Map.of());

        assertThat(after.path()).isEqualTo(power);
        assertThat(after.document().select(".impact .change").text()).contains(start.title());
        assertThat(readings.head(code).revision().number()).isEqualTo(2);
        assertThat(after.document().select("#begin")).isEmpty();
        assertThat(readings.head(code).review().verdict(Budget.POWER))
                .as("no rating is known")
                .isIn(Verdict.UNKNOWN, Verdict.BREAKS);

        browser.send(after, "/airframes/" + code + "/undo", Map.of());
        assertThat(readings.head(code).build().power().sources()).isEmpty();
        assertThat(readings.head(code).build().power().rails()).isEmpty();
    }

    @Test
    void failuresAreNotCalledHarmlessWhileNothingHangsOnARail() {
        openBlank();
        Page after = browser.send(browser.open(power), power + "/starts/one-pack", Map.of());

        assertThat(after.document().select("section[aria-labelledby=failures]").text())
                .contains("Not known yet: nothing hangs on a rail")
                .doesNotContain("No single failure", "Nothing is lost", "take nothing");
    }

    @Test
    void aStartThatComesLateIsNotPutOnTopOfASupply() {
        openBlank();
        Page first = browser.open(power);
        browser.send(first, power + "/starts/one-pack", Map.of());
        Page late = browser.post(power + "/starts/two-packs", first, Map.of("seen", "2"));

        assertThat(late.text()).contains("is there already");
        assertThat(readings.head(code).revision().number()).isEqualTo(2);
        assertThat(browser.post(power + "/starts/seven-packs", first, Map.of("seen", "1"))
                        .status())
                .isEqualTo(404);
    }

    @Test
    void aFailureThatIsLookedAtIsSaidInWords() {
        Page harmless = browser.open("/airframes/curlew/power?failed=element.standby-avionics.4");
        assertThat(harmless.document().select("#failed").text())
                .contains("“Standby diode” in “Standby to avionics” fails open.")
                .contains("Nothing is lost: “Avionics, 5 V” keeps at least");
        assertThat(harmless.document().select("details[open] tr.changed")).hasSize(1);

        Page grave = browser.open("/airframes/curlew/power?failed=source.flight-pack");
        assertThat(grave.document().select("#failed").text())
                .contains("“Flight pack” gives nothing.")
                .contains("Aileron, ")
                .contains("the flight depends on them");
        assertThat(grave.document()
                        .select("section[aria-labelledby=feeds] svg.balance-drawing")
                        .outerHtml())
                .isNotEqualTo(harmless.document()
                        .select("section[aria-labelledby=feeds] svg.balance-drawing")
                        .outerHtml());
        assertThat(grave.document().select("table a[aria-current=true]").attr("href"))
                .isEqualTo("/airframes/curlew/power?failed=source.flight-pack#feeds");
    }

    @ParameterizedTest
    @ValueSource(strings = {"nonsense", "element.standby-avionics.0", "element..", "%3Cb%3E", "source.", "0"})
    void aFailureThatIsNotThereIsSaidToBeUnknown(String failed) {
        Page page = browser.open("/airframes/curlew/power?failed=" + failed);

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text()).contains("There is no such failure here, or no longer");
        assertThat(page.document().select("#failed, tr.changed")).isEmpty();
    }

    @Test
    void whatHoldsIsFoldedAndWhatDoesNotStaysOpen() {
        Document page = browser.open("/airframes/curlew/power").document();

        assertThat(page.select("#findings > .findings .verdict").eachText())
                .isNotEmpty()
                .doesNotContain("holds");
        assertThat(page.select("#findings details:not([open]) .verdict").eachText())
                .containsOnly("holds");
        assertThat(page.select("section[aria-labelledby=elements] > table").text())
                .contains("Regulator, servos 6 V, 12 A")
                .doesNotContain("Avionics fuse", "peak not known");
        assertThat(page.select("section[aria-labelledby=elements] details").text())
                .contains("Avionics fuse")
                .doesNotContain("tight", "breaks", "not known");
    }

    @Test
    void aRailIsJudgedAlikeInTheTableAndInTheDrawing() {
        Document page = browser.open("/airframes/curlew/power").document();

        assertThat(page.select("section[aria-labelledby=rails] tr:has(a:contains(Servos)) .verdict")
                        .text())
                .isEqualTo("breaks");
    }

    @Test
    void theTileSaysHowLongItFliesAsThePageDoes() {
        Document page = browser.open("/airframes/dunlin/power").document();
        String minutes = page.select("#findings details").text().replaceAll(".*It flies (\\S+).*", "$1");

        assertThat(page.select(".title-block [aria-current]").text()).endsWith(", " + minutes);
    }

    @Test
    void failuresThatDoTheSameShareARow() {
        Document page = browser.open("/airframes/dunlin/power").document();

        assertThat(page.select("section[aria-labelledby=failures] > table tr:has(a:contains(Pack plug))")
                        .text())
                .contains("“Flight pack” gives nothing", "Pack leads", "go dark: the flight depends on them");
    }

    @Test
    void everyFailureOfTheTableCanBeLookedAt() {
        for (String address : browser.open("/airframes/dunlin/power")
                .document()
                .select("section[aria-labelledby=failures] a")
                .eachAttr("href")) {
            assertThat(browser.open(address.replaceAll("#.*", "")).document().select("#failed"))
                    .as(address)
                    .hasSize(1);
        }
    }

    @Test
    void whatIsDrawnPhaseByPhaseAndTheDayAreOnThePage() {
        String text = browser.open("/airframes/curlew/power").text();

        assertThat(text)
                .contains("Energy by phase")
                .contains("kept for the landing, not counted in it 5")
                .contains("25.2\u2009V at most")
                .contains("A day in the sun")
                .contains("harvest in 24 h")
                .contains("through the night")
                .contains("of wiring");
        assertThat(browser.open("/airframes/dunlin/power").text()).doesNotContain("A day in the sun");
    }
}
