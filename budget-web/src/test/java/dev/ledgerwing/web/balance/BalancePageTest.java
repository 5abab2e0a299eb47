package dev.ledgerwing.web.balance;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** The balance page, and trying what would put it right. */
@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class BalancePageTest {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    private final String code = "b" + UUID.randomUUID().toString().substring(0, 18);
    private final String balance = "/airframes/" + code + "/balance";
    private Browser browser;

    @BeforeEach
    void signIn() {
        browser = SignedInBrowser.at(port);
    }

    /** The CG at 500 mm, held against a band that may exclude it. */
    private void openWithBand(double forwardMm, double aftMm) {
        Build build = BalanceAirframes.withWingAndPack(code);
        desk.open(
                build.withGeometry(build.geometry()
                        .withBalanceLimits(BalanceLimits.ofStations(Length.ofMm(forwardMm), Length.ofMm(aftMm)))),
                new Signature("Ines", ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "godwit", "dunlin"})
    void everyDemoAirframeHasItsPage(String airframe) {
        Page page = browser.open("/airframes/" + airframe + "/balance");

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.document().select("svg.planform")).hasSize(2);
        assertThat(page.document().select("[style], main script")).isEmpty();
        assertThat(page.document().select(".title-block [aria-current] .label").text())
                .isEqualTo("Balance");
        assertThat(page.text()).contains("Load cases").contains("Ixx").contains("Estimates are estimates");
    }

    @Test
    void ballastIsNotCalledHarmlessWhereTheMassBreaksAlready() {
        String offers = browser.open("/airframes/curlew/balance")
                .document()
                .select("section[aria-labelledby=corrections]")
                .text();

        assertThat(offers)
                .contains("of ballast")
                .contains("Breaks nothing new, but adds to a mass that breaks already.");
    }

    @Test
    void anEmptyAirframeSaysWhatToDoFirst() {
        desk.open(BalanceAirframes.blank(code), new Signature("Ines", ""));
        Page page = browser.open(balance);
        assertThat(page.text())
                .contains("Nothing is in this airframe yet")
                .contains("the two limits of the kit")
                .contains("no CG yet");
        assertThat(readings.head(code).review().verdict(Budget.BALANCE)).isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void aNoseHeavyAirframeIsToldWhatWouldDo() {
        openWithBand(505, 545);
        Page page = browser.open(balance);

        assertThat(page.document().select(".title-block [aria-current]").text())
                .contains("breaks")
                .contains("500")
                .contains("505 to 545");
        assertThat(page.document()
                        .select("section[aria-labelledby=corrections]")
                        .text())
                .contains("Flight pack")
                .contains("0\u2009g");
    }

    @Test
    void momentsAddUpOnScreen() {
        openWithBand(505, 545);
        Element table = browser.open(balance).document().expectFirst("[aria-label=Moments by assembly, table] table");
        assertThat(table.select("tbody tr td:nth-child(3)").eachText()).containsExactly("600000", "150000");
        assertThat(table.select("tfoot td:nth-child(3)").text()).isEqualTo("750000");
    }

    @Test
    void aCorrectionIsLookedAtAppliedAndTakenBack() {
        openWithBand(505, 545);
        Page page = browser.open(balance);
        Page trial =
                browser.open(page.document().expectFirst("a[href*=/correction]").attr("href"));
        assertThat(trial.document().select("svg.planform")).hasSize(2);
        assertThat(trial.text()).contains("nothing is changed yet").contains("Load cases after it");
        assertThat(readings.head(code).revision().number()).isEqualTo(1);

        Page after = browser.send(trial, balance + "/correction", Map.of());
        assertThat(after.path()).isEqualTo(balance);
        assertThat(after.document().select(".impact .change").text()).contains("Flight pack");
        assertThat(readings.head(code).review().verdict(Budget.BALANCE)).isNotEqualTo(Verdict.BREAKS);
        browser.send(after, "/airframes/" + code + "/undo", Map.of());
        assertThat(readings.head(code).review().verdict(Budget.BALANCE)).isEqualTo(Verdict.BREAKS);
    }

    @Test
    void aCorrectionOfARecordThatMovedOnIsOfferedAnew() {
        openWithBand(505, 545);
        Page trial = browser.open(browser.open(balance)
                .document()
                .expectFirst("a[href*=/correction]")
                .attr("href"));
        desk.change(
                new Seen(code, 1),
                Deed.fitting(
                        "noted",
                        build -> build.withLines(build.lines().stream()
                                .map(BalancePageTest::renamed)
                                .toList())),
                new Signature("Ines", ""));
        Page stale = browser.send(trial, balance + "/correction", Map.of());

        assertThat(stale.text()).contains("work it out again");
        assertThat(readings.head(code).revision().number()).isEqualTo(2);
        Page gone = browser.open(balance + "/correction?key=nothing");
        assertThat(gone.path()).isEqualTo(balance);
        assertThat(gone.text()).contains("no longer on offer");
    }

    private static PartLine renamed(PartLine line) {
        return PartLine.named(line.id(), line.assembly(), line.name() + " 2", line.category(), 1, line.mass())
                .withPlace(line.place());
    }
}
