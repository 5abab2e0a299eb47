package dev.ledgerwing.web.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

/** Wants the demo fleet untouched, so it does not share a server with tests that edit it. */
@PageTest
@DirtiesContext(classMode = DirtiesContext.ClassMode.BEFORE_CLASS)
@TestPropertySource(properties = "ledgerwing.demo=true")
class FleetPageTest {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Test
    void showsTheDemoFleetWorstFirst() {
        Page fleet = browser().open("/");

        assertThat(fleet.document().select("tbody tr td:first-child a").eachText())
                .containsSubsequence("Curlew", "Godwit", "Dunlin");
        assertThat(verdict(fleet, "curlew")).startsWith("breaks by 134.3");
        assertThat(verdict(fleet, "godwit")).isEqualTo("tight");
        assertThat(verdict(fleet, "dunlin")).isEqualTo("holds");
        assertThat(fleet.text()).contains("Lately").contains("Mara made Curlew r12");
        assertThat(readings.history("curlew")).hasSize(12);
    }

    private static String verdict(Page fleet, String code) {
        return fleet.document()
                .expectFirst("a[href=/airframes/" + code + "/mass] .verdict")
                .text();
    }

    @Test
    void opensABlankAirframeAndSaysWhatToDoFirst() {
        Browser browser = browser();
        Page form = browser.open("/airframes/new");

        Page parts = browser.send(form, "/airframes/new", Map.of("name", "Great Snipe", "target", "3,2 kg"));

        assertThat(parts.path()).isEqualTo("/airframes/great-snipe/parts");
        assertThat(parts.text()).contains("Nothing is in this airframe yet").contains("not known");
        assertThat(readings.head("great-snipe").build().budget().targetMass())
                .satisfies(target -> assertThat(target.grams()).isEqualTo(3200));
    }

    @Test
    void copiesTheDesignOfAnotherAirframeButNotItsPieces() {
        Browser browser = browser();

        browser.send(
                browser.open("/airframes/new"),
                "/airframes/new",
                Map.of("name", "Dunlin two", "pattern", "dunlin", "target", "2100"));

        assertThat(readings.head("dunlin-two").build().lines())
                .hasSameSizeAs(readings.head("dunlin").build().lines());
        assertThat(readings.head("dunlin-two").review().mass().total().weighed().mg())
                .isZero();
    }

    @Test
    void keepsWhatWasTypedAndSaysWhatIsWrong() {
        Browser browser = browser();
        Page form = browser.open("/airframes/new");

        Page again =
                browser.send(form, "/airframes/new", Map.of("name", "Curlew", "target", "1e400", "code", "Not A Code"));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document().expectFirst("[name=target]").val()).isEqualTo("1e400");
        assertThat(again.document().select(".error").eachText())
                .hasSize(2)
                .anyMatch(error -> error.contains("A code has 1 to 40"))
                .anyMatch(error -> error.contains("is not a mass"));
        assertThat(browser.send(form, "/airframes/new", Map.of("name", "Curlew", "target", "", "code", ""))
                        .text())
                .contains("There is an airframe “curlew” already");
    }

    @Test
    void saysKindlyThatThereIsNoSuchAirframe() {
        Page missing = browser().open("/airframes/heron/parts");

        assertThat(missing.status()).isEqualTo(404);
        assertThat(missing.text()).contains("There is no airframe “heron”.");
    }

    private Browser browser() {
        return SignedInBrowser.at(port);
    }
}
