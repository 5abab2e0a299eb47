package dev.ledgerwing.web.history;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** Any two revisions of one airframe. */
@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class ComparePageTest {

    private static final String COMPARE = "/airframes/curlew/history/compare";

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    private Browser browser;

    @BeforeEach
    void signIn() {
        browser = SignedInBrowser.at(port);
    }

    private Page compare(String from, String to) {
        return browser.open(COMPARE + "?from=" + URLEncoder.encode(from, StandardCharsets.UTF_8) + "&to="
                + URLEncoder.encode(to, StandardCharsets.UTF_8));
    }

    private String predicted(int number) {
        return Figures.METRIC.mass(
                readings.at(new Seen("curlew", number)).review().mass().predicted());
    }

    @Test
    void tellsAllThatLiesBetweenTwoRevisions() {
        Document page = compare("3", "7").document();
        assertThat(page.select(".heading h2").text()).isEqualTo("From revision 3 to 7");
        assertThat(page.select("table").text()).contains("Predicted mass " + predicted(3) + " " + predicted(7));
        assertThat(page.select("table.edits tbody tr"))
                .hasSize(readings.difference(new Seen("curlew", 3), 7).edits().size());
    }

    @Test
    void goesBackwardsToo() {
        Document page = compare("7", "3").document();
        assertThat(page.select("table").text()).contains("Predicted mass " + predicted(7) + " " + predicted(3));
    }

    @Test
    void saysThatARevisionDoesNotDifferFromItself() {
        assertThat(compare("5", "5").document().text()).contains("Nothing differs.");
    }

    @Test
    void isReachedFromTheHistoryWithTheNewestTwo() {
        Page history = browser.open("/airframes/curlew/history");
        Page compared = browser.send(history, COMPARE, Map.of());
        int head = readings.head("curlew").revision().number();
        assertThat(compared.path()).isEqualTo(COMPARE + "?from=" + (head - 1) + "&to=" + head);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            abc                       | 7
            3                         | ''
            -3                        | 7
            0                         | 1
            1e400                     | NaN
            3                         | 9999
            99999999999999999999      | 7
            <script>alert(1)</script> | 7
            """)
    void keepsWhatWasTypedAndSaysWhatIsWrong(String from, String to) {
        Page page = compare(from, to);
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.document().expectFirst("#wrong").text())
                .startsWith("Please give two revision numbers from 1 to ");
        assertThat(page.document().expectFirst("#from").val()).isEqualTo(from);
        assertThat(page.document().expectFirst("#to").val()).isEqualTo(to);
        assertThat(page.document().select("main script")).isEmpty();
    }
}
