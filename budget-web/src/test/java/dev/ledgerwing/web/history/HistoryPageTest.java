package dev.ledgerwing.web.history;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Revision;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** The history tells what every revision did, and leads back to any of them. */
@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class HistoryPageTest {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    private final String code = "h" + UUID.randomUUID().toString().substring(0, 18);
    private final String history = "/airframes/" + code + "/history";
    private Browser browser;

    @BeforeEach
    void signIn() {
        browser = SignedInBrowser.at(port);
    }

    @AfterEach
    void readGramsAgain() {
        read(UnitSystem.GRAM_MILLIMETRE);
    }

    private void read(UnitSystem units) {
        browser.post("/units", browser.open("/"), Map.of("units", units.name()));
    }

    private Document page(String path) {
        Page page = browser.open(path);
        assertThat(page.status()).as(path).isEqualTo(200);
        return page.document();
    }

    /** An airframe of one part of 1000 g, weighed. */
    private void open(String part) {
        Build blank = Build.blank(
                new Airframe(code, "Airframe " + code, null, Stage.DESIGN, "nose tip"),
                new MassBudget(Mass.ofGrams(2000), null, null, null));
        Build build = PartDeeds.added(blank, new Assembly("wing", "Wing", Assembly.MovesWith.WING));
        desk.open(PartDeeds.added(build, line(part, 1000)), new Signature("Ines", "to begin with"));
    }

    private static PartLine line(String name, double grams) {
        return PartLine.named(
                "L1", "wing", name, Category.STRUCTURE, 1, LineMass.of(Mass.ofGrams(grams), Basis.WEIGHED));
    }

    private void weigh(double grams, String title) {
        change(Deed.fitting(title, build -> withMass(build, grams)));
    }

    private static Build withMass(Build build, double grams) {
        return build.withLines(build.lines().stream()
                .map(each -> each.withMass(LineMass.of(Mass.ofGrams(grams), Basis.WEIGHED)))
                .toList());
    }

    private void change(Deed deed) {
        Outcome outcome = desk.change(new Seen(code, head().revision().number()), deed, new Signature("Ines", ""));
        assertThat(outcome).isInstanceOf(Outcome.Landed.class);
    }

    private Snapshot head() {
        return readings.head(code);
    }

    private Mass massOfThePart() {
        return head().build().lines().get(0).totalMass();
    }

    private static List<String> numbers(Document page) {
        return page.select("main > table tbody tr > td:first-child").eachText();
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "godwit", "dunlin"})
    void listsEveryRevisionNewestFirstWithWhatItWeighed(String airframe) {
        List<Revision> revisions = readings.history(airframe);
        Elements rows = page("/airframes/" + airframe + "/history").select("main > table tbody tr");

        assertThat(rows).hasSameSizeAs(revisions);
        for (int i = 0; i < revisions.size(); i++) {
            Revision revision = revisions.get(i);
            Element row = rows.get(i);
            assertThat(row.expectFirst("td").text()).isEqualTo(Integer.toString(revision.number()));
            assertThat(row.expectFirst("th a").text()).isEqualTo(revision.title());
            assertThat(row.expectFirst("th a").attr("href"))
                    .isEqualTo("/airframes/" + airframe + "/history/" + revision.number());
            assertThat(row.expectFirst(".note").text())
                    .contains(revision.author())
                    .contains(revision.reason());
            assertThat(row.child(2).text()).isEqualTo(change(revisions, i));
            assertThat(row.child(3).text()).startsWith(Figures.METRIC.mass(revision.predicted()));
            assertThat(row.child(4).text()).isEqualTo(revision.massVerdict().word());
        }
    }

    private static String change(List<Revision> newestFirst, int i) {
        if (i + 1 == newestFirst.size()) {
            return "";
        }
        Mass change =
                newestFirst.get(i).predicted().minus(newestFirst.get(i + 1).predicted());
        return change.mg() == 0 ? "±0" : Figures.METRIC.signedMass(change);
    }

    @Test
    void saysWhetherAChangeOfMassCorrectedTheLedger() {
        open("Panels");
        change(Deed.correcting("weighed again", build -> withMass(build, 1010)));
        weigh(1100, "longer panels");
        change(Deed.fitting("target", build -> build.withBudget(new MassBudget(Mass.ofGrams(2100), null, null, null))));

        Elements notes = page(history).select("main > table .note");
        assertThat(notes.get(0).text()).doesNotContain("aboard");
        assertThat(notes.get(1).text()).endsWith(", changes what is aboard");
        assertThat(notes.get(2).text()).endsWith(", corrects the ledger");
    }

    @Test
    void tellsEveryEditOfARevisionInPlainWords() {
        Document page = page("/airframes/curlew/history/11");
        Elements edits = page.select("table.edits tbody tr");
        assertThat(edits)
                .hasSize(readings.change(new Seen("curlew", 11)).edits().size());
        assertThat(edits.eachText())
                .contains("Primer and paint, pod and nose part added 1 × 28\u2009g weighed, Pod and boom")
                .anySatisfy(text -> assertThat(text)
                        .startsWith("Film and resin over the cells part changed mass of one 60\u2009g → 76\u2009g"
                                + " basis guessed → weighed state planned → fitted note none →"));
        assertThat(page.expectFirst("main").text()).doesNotContainPattern("unitMass|FITTED|WEIGHED|null");
    }

    @Test
    void saysWhatARevisionDidToTheBudgets() {
        Snapshot before = readings.at(new Seen("curlew", 7));
        Snapshot after = readings.at(new Seen("curlew", 8));
        Document page = page("/airframes/curlew/history/8");

        assertThat(page.select("main > table:not(.edits) tr").eachText())
                .contains("Predicted mass "
                        + Figures.METRIC.mass(before.review().mass().predicted()) + " "
                        + Figures.METRIC.mass(after.review().mass().predicted()) + " "
                        + Figures.METRIC.signedMass(after.review()
                                .mass()
                                .predicted()
                                .minus(before.review().mass().predicted())));
        assertThat(before.review().verdict(Budget.MASS))
                .isNotEqualTo(after.review().verdict(Budget.MASS));
        assertThat(page.select("h2").eachText()).contains("Findings that came, went or changed");
        assertThat(page.text()).contains("gone").contains("what it weighs is in no sum yet");
    }

    @Test
    void theFirstRevisionTellsWhatTheAirframeBeganWith() {
        Document page = page("/airframes/godwit/history/1");
        assertThat(page.select("h2").eachText()).doesNotContain("In the budgets");
        assertThat(page.select("table.edits tbody tr")).isNotEmpty();
        assertThat(page.select("form[action=/airframes/godwit/undo]")).isEmpty();
    }

    @Test
    void aPartThatIsGoneIsNoLink() {
        open("Panels");
        change(Deed.fitting("panels out", build -> PartDeeds.removed(build, "L1")));
        Document page = page(history + "/2");
        assertThat(page.select("table.edits tbody th").text()).isEqualTo("Panels part removed");
        assertThat(page.select("table.edits a")).isEmpty();
    }

    @Test
    void takingARevisionBackKeepsWhatCameSince() {
        open("Panels");
        weigh(1100, "longer panels");
        change(Deed.fitting("target", build -> build.withBudget(new MassBudget(Mass.ofGrams(2500), null, null, null))));

        Page after = browser.send(browser.open(history + "/2"), "/airframes/" + code + "/undo", Map.of());

        assertThat(after.path()).isEqualTo(history);
        assertThat(after.document().expectFirst(".impact").text()).contains("Revision 2 taken back: longer panels");
        assertThat(massOfThePart()).isEqualTo(Mass.ofGrams(1000));
        assertThat(head().build().budget().targetMass()).isEqualTo(Mass.ofGrams(2500));
        assertThat(head().revision().number()).isEqualTo(4);
    }

    @Test
    void goingBackMakesEverythingAsItWasThenAsANewRevision() {
        open("Panels");
        weigh(1100, "longer panels");
        change(Deed.fitting("target", build -> build.withBudget(new MassBudget(Mass.ofGrams(2500), null, null, null))));

        Page after = browser.send(browser.open(history + "/1"), history + "/1/restore", Map.of());

        assertThat(after.path()).isEqualTo(history);
        assertThat(after.document().expectFirst(".impact .change").text())
                .isEqualTo("Back to revision 1: New airframe");
        assertThat(head().build()).isEqualTo(readings.at(new Seen(code, 1)).build());
        assertThat(head().revision().number()).isEqualTo(4);
        assertThat(numbers(after.document())).containsExactly("4", "3", "2", "1");
    }

    @Test
    void goingBackIsMadeAgainstTheRevisionSeenAndClashesWithWhatOthersDid() {
        open("Panels");
        weigh(1100, "longer panels");
        Page seen = browser.open(history + "/1");
        weigh(1200, "longer still");

        Page after = browser.send(seen, history + "/1/restore", Map.of());

        assertThat(after.document().select("main .notice.problem").text())
                .isEqualTo("Part “Panels”, mass: set differently on both sides."
                        + " Ines made revision 3 in the meantime (longer still).");
        assertThat(massOfThePart()).isEqualTo(Mass.ofGrams(1200));
    }

    @Test
    void theNewestRevisionOffersNoWayBackToItself() {
        assertThat(page("/airframes/curlew/history/12").select("form[action$=/restore]"))
                .isEmpty();
        assertThat(page("/airframes/curlew/history/11")
                        .select("form[action$=/restore] [name=seen]")
                        .val())
                .isEqualTo("12");
    }

    @Test
    void aLongHistoryComesInPages() {
        open("Panels");
        for (int i = 2; i <= 205; i++) {
            weigh(1000 + i, "step " + i);
        }
        Page newest = browser.open(history);
        assertThat(numbers(newest.document()))
                .hasSize(100)
                .startsWith("205", "204")
                .endsWith("106");
        assertThat(newest.document().select("nav.pages a").eachText()).containsExactly("Earlier revisions");

        String earlier = newest.document().expectFirst("nav.pages a").attr("href");
        Page middle = browser.open(earlier);
        assertThat(numbers(middle.document())).hasSize(100).startsWith("105").endsWith("6");
        assertThat(middle.document().select("nav.pages a").eachText())
                .containsExactly("Later revisions", "Earlier revisions");
        assertThat(middle.document()
                        .expectFirst("main > table tbody tr:last-child > td:nth-child(3)")
                        .text())
                .isEqualTo("+1\u2009g");

        Page oldest =
                browser.open(middle.document().select("nav.pages a").get(1).attr("href"));
        assertThat(numbers(oldest.document())).containsExactly("5", "4", "3", "2", "1");
        Page back = browser.open(oldest.document().expectFirst("nav.pages a").attr("href"));
        assertThat(numbers(back.document())).startsWith("105");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-7", "99", "2147483647"})
    void anyPageNumberShowsAPage(String upTo) {
        assertThat(numbers(page("/airframes/godwit/history?upTo=" + upTo))).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/airframes/curlew/history/99",
                "/airframes/curlew/history/0",
                "/airframes/heron/history",
                "/airframes/heron/history/1",
                "/airframes/heron/history/compare",
                "/airframes/curlew/history/99/build.json"
            })
    void whatIsNotThereIsNotFound(String path) {
        assertThat(browser.open(path).status()).isEqualTo(404);
    }

    @Test
    void aNumberThatIsNoneIsNotUnderstood() {
        assertThat(browser.open("/airframes/curlew/history/abc").status()).isEqualTo(400);
        assertThat(browser.open("/airframes/curlew/history?upTo=abc").status()).isEqualTo(400);
    }

    @Test
    void hostileTextIsText() {
        String hostile = "<img src=x onerror=alert(1)> ${7*7} =1+1";
        open(hostile);
        Outcome outcome = desk.change(
                new Seen(code, 1),
                Deed.fitting(hostile, build -> withMass(build, 900)),
                new Signature("Ines", "<script>alert(2)</script>"));
        assertThat(outcome).isInstanceOf(Outcome.Landed.class);

        for (String path : List.of(history, history + "/2", history + "/compare?from=1&to=2")) {
            Document page = page(path);
            assertThat(page.select("main img, main script")).isEmpty();
            assertThat(page.expectFirst("main").text()).contains(hostile);
        }
        assertThat(page(history).text()).contains("<script>alert(2)</script>");
    }

    @Test
    void aMemberReadsOunces() {
        open("Panels");
        weigh(1100, "longer panels");
        read(UnitSystem.OUNCE_INCH);
        Document page = page(history + "/2");
        assertThat(page.select("table.edits").text()).contains("mass of one 35.27\u2009oz → 38.8\u2009oz");
        assertThat(page.expectFirst("main").text()).doesNotContainPattern("\\d\u2009k?g\\b");
        assertThat(page(history).select("main > table").text()).contains("+3.53\u2009oz");
    }

    @Test
    void holdsNothingThatThePolicyForbids() {
        for (String path : List.of("", "/11", "/compare?from=1&to=12")) {
            Document page = page("/airframes/curlew/history" + path);
            assertThat(page.select("[style], style, script:not([src]), [hx-on]"))
                    .isEmpty();
            assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
        }
    }
}
