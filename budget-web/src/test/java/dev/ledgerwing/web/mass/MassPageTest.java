package dev.ledgerwing.web.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.mass.CaseMass;
import dev.ledgerwing.core.mass.MarginOf;
import dev.ledgerwing.core.mass.MassForecast;
import dev.ledgerwing.core.mass.MassGroup;
import dev.ledgerwing.core.mass.MassMargin;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.mass.WeighNext;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.web.airframe.FindingRow;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** The mass page says what the calculations say, and never makes an unknown look fine. */
@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class MassPageTest {

    private static final Figures OUNCES = new Figures(UnitSystem.OUNCE_INCH);

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

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

    private Document page(String code) {
        Page page = browser.open("/airframes/" + code + "/mass");
        assertThat(page.status()).isEqualTo(200);
        return page.document();
    }

    private String opened(Build build) {
        desk.open(build, new Signature("Mara", ""));
        return build.airframe().code();
    }

    private static String fresh() {
        return "m" + UUID.randomUUID().toString().substring(0, 18);
    }

    /** The figure of a term, its verdict's word included. */
    private static String term(Document page, String label) {
        return row(page, label).expectFirst("td").text();
    }

    private static String note(Document page, String label) {
        return row(page, label).select(".note").text();
    }

    private static Element row(Document page, String label) {
        return page.select(".terms tr").stream()
                .filter(row -> Objects.requireNonNull(row.selectFirst("th > span"))
                        .text()
                        .equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> table(Document page, String heading) {
        Element title = page.select("h2").stream()
                .filter(each -> each.text().equals(heading))
                .findFirst()
                .orElseThrow();
        Element table = Objects.requireNonNull(title.parent()).expectFirst("table");
        return table.select("tbody tr, tfoot tr").eachText();
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "godwit", "dunlin"})
    void theStatementIsTheCalculations(String code) {
        MassStatement mass = readings.head(code).review().mass();
        MassMargin margin = mass.margin().orElseThrow();
        Figures figures = Figures.METRIC;
        Document page = page(code);

        assertThat(term(page, "Basic mass")).isEqualTo(figures.mass(mass.basic()));
        assertThat(term(page, "Growth allowance")).isEqualTo(figures.signedMass(mass.growth()));
        assertThat(term(page, "Predicted mass")).isEqualTo(figures.mass(mass.predicted()));
        assertThat(term(page, "Target")).isEqualTo(figures.mass(margin.target()));
        assertThat(term(page, "Margin")).endsWith(figures.signedMass(margin.mass()));
        assertThat(note(page, "Margin"))
                .isEqualTo(percent(margin, MarginOf.TARGET) + " of target, " + percent(margin, MarginOf.PREDICTED)
                        + " of predicted mass, " + percent(margin, MarginOf.BASIC) + " of basic mass");
        assertThat(term(page, "Reserve wanted")).isEqualTo(figures.mass(margin.reserve()));
        assertThat(term(page, "Weighed"))
                .isEqualTo(Figures.percent(Objects.requireNonNull(mass.total().weighedPercent())));
    }

    private static String percent(MassMargin margin, MarginOf denominator) {
        return Figures.percent(Objects.requireNonNull(margin.percent(denominator)));
    }

    @Test
    void theCeilingIsJudgedAtTheHeaviestFlightCaseByItsName() {
        MassStatement mass = readings.head("curlew").review().mass();
        CaseMass heaviest = mass.heaviestFlight();
        Document page = page("curlew");

        assertThat(heaviest.loadCase().design()).isFalse();
        assertThat(term(page, "Ceiling")).isEqualTo("below " + Figures.METRIC.mass(Mass.ofGrams(25_000)));
        assertThat(term(page, "Left to the ceiling"))
                .isEqualTo("holds "
                        + Figures.METRIC.signedMass(Mass.ofGrams(25_000).minus(heaviest.predicted())));
        assertThat(note(page, "Left to the ceiling"))
                .contains("“" + heaviest.loadCase().name() + "”")
                .contains(Figures.METRIC.mass(heaviest.predicted()));
    }

    @Test
    void aBookingIsATermOfItsOwn() {
        assertThat(term(page("dunlin"), "Booking"))
                .isEqualTo(Figures.METRIC.signedMass(
                        readings.head("dunlin").review().mass().booking()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "godwit", "dunlin"})
    void bothBreakdownsHaveARowForEveryGroupAndAddUp(String code) {
        MassStatement mass = readings.head(code).review().mass();
        Document page = page(code);
        assertThat(table(page, "By assembly")).containsExactlyElementsOf(rows(mass.byAssembly(), mass));
        assertThat(table(page, "By category")).containsExactlyElementsOf(rows(mass.byCategory(), mass));
    }

    private static List<String> rows(List<MassGroup> groups, MassStatement mass) {
        List<String> rows = new ArrayList<>();
        double shares = 0;
        for (MassGroup group : groups) {
            double share = 100.0
                    * group.total().predicted().mg()
                    / mass.total().predicted().mg();
            shares += share;
            rows.add(row(group.title(), group.total().basic(), group.total().growth(), share));
        }
        assertThat(shares).isCloseTo(100, within(1e-9));
        rows.add(row("All together", mass.total().basic(), mass.total().growth(), 100));
        return rows;
    }

    private static String row(String title, Mass basic, Mass growth, double share) {
        Figures figures = Figures.METRIC;
        return String.join(
                " ",
                title,
                figures.smallMass(basic),
                figures.smallMass(growth),
                figures.smallMass(basic.plus(growth)),
                Figures.percent(share));
    }

    @Test
    void everyLoadCaseIsThereWithWhatIsJudgedInIt() {
        List<CaseMass> cases = readings.head("curlew").review().mass().cases();
        List<String> rows = table(page("curlew"), "By load case");
        assertThat(rows).hasSameSizeAs(cases);
        for (int i = 0; i < cases.size(); i++) {
            assertThat(rows.get(i))
                    .startsWith(cases.get(i).loadCase().name())
                    .endsWith(Figures.METRIC.mass(cases.get(i).basic()) + " "
                            + Figures.METRIC.mass(cases.get(i).predicted()));
        }
        assertThat(rows)
                .filteredOn(row -> row.contains("the target is judged here"))
                .hasSize(1);
        assertThat(rows)
                .filteredOn(row -> row.contains("the ceiling is judged here"))
                .hasSize(1);
    }

    @Test
    void findingsComeWorstFirstWithTheirRemediesAndWhatThoseSave() {
        List<Finding> findings = readings.head("curlew").review().findings(Budget.MASS);
        Document page = page("curlew");

        assertThat(page.select("#findings .findings > li > div > span:not(.verdict)")
                        .eachText())
                .containsExactlyElementsOf(
                        findings.stream().map(Finding::sentence).toList());
        assertThat(page.expectFirst("#findings .verdict").text()).isEqualTo("breaks");
        assertThat(page.select("#findings .cures li"))
                .hasSize(findings.stream()
                        .mapToInt(each -> each.remedies().size())
                        .sum());
        assertThat(page.select("#findings .cures a").eachAttr("href"))
                .isNotEmpty()
                .allSatisfy(
                        address -> assertThat(browser.open(address).status()).isEqualTo(200));
        assertThat(page.select("#findings .cost").eachText())
                .isNotEmpty()
                .allSatisfy(cost -> assertThat(cost).startsWith("saves "));
    }

    @Test
    void theForecastIsTheCalculationsAndSaysWhatIsNotInIt() {
        MassForecast forecast = readings.head("godwit").review().massForecast();
        Document page = page("godwit");

        assertThat(term(page, "Standard uncertainty"))
                .isEqualTo(Figures.METRIC.roughMass(forecast.standardUncertainty()));
        assertThat(term(page, "95 % band"))
                .isEqualTo(Figures.METRIC.roughMass(forecast.band95().low()) + " to "
                        + Figures.METRIC.roughMass(forecast.band95().high()));
        double probability = Objects.requireNonNull(forecast.probabilityWithinTarget());
        assertThat(probability).isBetween(0.001, 0.999);
        assertThat(term(page, "Stays within the target")).isEqualTo(Figures.percent(100 * probability));
        assertThat(page.text()).contains("a forgotten part lies outside the band");
    }

    @Test
    void aForecastIsNeverACertainty() {
        assertThat(term(page("curlew"), "Stays within the target")).isEqualTo("below " + Figures.percent(0.1));
        assertThat(term(page("dunlin"), "Stays within the target")).isEqualTo("above " + Figures.percent(99.9));
    }

    @Test
    void whatToWeighNextIsRankedAndLeadsToThePart() {
        List<WeighNext> next = readings.head("godwit").review().massForecast().weighNext();
        Document page = page("godwit");
        List<Element> rows =
                Objects.requireNonNull(page.expectFirst("#weigh-next").parent()).select("tbody tr");

        assertThat(rows).hasSizeBetween(3, 10);
        for (int i = 0; i < rows.size(); i++) {
            assertThat(rows.get(i).expectFirst("a").attr("href"))
                    .isEqualTo("/airframes/godwit/parts/" + next.get(i).row().line());
            assertThat(rows.get(i).text())
                    .endsWith("±" + Figures.METRIC.roughMass(next.get(i).before()) + " → ±"
                            + Figures.METRIC.roughMass(next.get(i).after()));
        }
    }

    @Test
    void theGrowthIsDrawnAndStandsInFigures() {
        Document page = page("dunlin");
        assertThat(page.select("figure.growth-chart svg[role=img] > title").text())
                .contains("Mass from 28 Mar 2026");
        assertThat(page.select("details.figures tbody tr")).hasSize((int) readings.history("dunlin").stream()
                .map(each -> each.moment().atZone(ZoneOffset.UTC).toLocalDate())
                .distinct()
                .count());
        assertThat(page.expectFirst("details.figures tbody tr").text())
                .startsWith("28 Mar 2026 r1")
                .contains(Figures.METRIC.mass(readings.history("dunlin").stream()
                        .filter(each -> each.number() == 1)
                        .findFirst()
                        .orElseThrow()
                        .predicted()));
    }

    @Test
    void theTrendSaysWhereItLeads() {
        assertThat(page("curlew").select(".sentence").eachText())
                .anySatisfy(text -> assertThat(text).contains("grown by about").contains("a week"))
                .contains("It is above the target already.");
        String code = opened(Airframes.withTwoParts(fresh(), Airframes.target(2000)));
        assertThat(page(code).select(".sentence").eachText())
                .containsExactly("A trend needs 5 days with changes; so far there is 1.");
        assertThat(page(code).select("figure.growth-chart")).isEmpty();
    }

    @Test
    void theRulesSayWhereTheyComeFrom() {
        Element rules = page("curlew").expectFirst("details.rules");
        assertThat(rules.select("strong").eachText())
                .hasSize(3)
                .allSatisfy(text -> assertThat(text).isEqualTo("Our own choice."));
        assertThat(rules.text())
                .contains(readings.head("curlew").build().judgedBy().growth().source())
                .contains("Build, now " + Figures.percent(5));
    }

    @Test
    void anAirframeWithoutAnythingSaysWhatToDoFirst() {
        String code = opened(Airframes.blank(fresh(), new MassBudget(null, null, null, null)));
        Document page = page(code);
        assertThat(page.expectFirst(".first-step").text()).startsWith("Nothing is in this airframe yet");
        assertThat(page.select(".first-step a").eachAttr("href"))
                .containsExactly("/airframes/" + code + "/parts/new", "/airframes/" + code + "/import");
        assertThat(page.select("svg.bar, .terms")).isEmpty();
        assertThat(page.select(".verdict.holds")).isEmpty();
    }

    @Test
    void withoutATargetThereIsNoneYet() {
        String code = opened(Airframes.withTwoParts(fresh(), new MassBudget(null, null, null, null)));
        Document page = page(code);
        assertThat(term(page, "Target")).isEqualTo("not known no target set yet");
        assertThat(page.expectFirst(".heading .btn").text()).isEqualTo("Set a target");
        assertThat(term(page, "Stays within the target")).isEqualTo("not known");
        assertThat(page.select("svg.bar .target, svg.bar .margin")).isEmpty();
        assertThat(page.select(".verdict.holds, .verdict.tight")).isEmpty();
    }

    @Test
    void aMassThatIsNotKnownMakesEverySumALowerBoundAndNothingHold() {
        Build build = Airframes.withTwoParts(fresh(), Airframes.target(9000));
        List<PartLine> lines = new ArrayList<>(build.lines());
        lines.add(Airframes.line("L3", "nose", "Pump", LineMass.notKnown()));
        String code = opened(build.withLines(lines));
        Document page = page(code);

        assertThat(term(page, "Basic mass")).startsWith("at least ");
        assertThat(term(page, "Predicted mass")).startsWith("at least ");
        assertThat(term(page, "Margin")).startsWith("not known at most ");
        assertThat(term(page, "95 % band")).isEqualTo("not known");
        assertThat(term(page, "Stays within the target")).isEqualTo("not known");
        assertThat(table(page, "By assembly"))
                .anySatisfy(row -> assertThat(row).startsWith("Nose at least "))
                .anySatisfy(row -> assertThat(row).startsWith("Wing 1000 "))
                .anySatisfy(row -> assertThat(row).startsWith("All together at least "));
        assertThat(table(page, "By load case")).singleElement().asString().contains("at least");
        assertThat(page.select("#findings a[href=/airframes/" + code + "/parts/L3]"))
                .hasSize(1);
        assertThat(page.select(".verdict.holds, .verdict.tight")).isEmpty();
    }

    @Test
    void manyFindingsAreCappedAndCounted() {
        Build build = Airframes.withTwoParts(fresh(), Airframes.target(9000));
        List<PartLine> lines = new ArrayList<>();
        for (int i = 0; i < 70; i++) {
            lines.add(Airframes.line("P" + i, "nose", "Clip " + i, LineMass.notKnown()));
        }
        Document page = page(opened(build.withLines(lines)));
        assertThat(page.select(".findings > li")).hasSize(FindingRow.MOST);
        assertThat(page.expectFirst("#findings > p").text()).isEqualTo("And 21 more, none worse than these.");
    }

    @Test
    void aMemberReadsOunces() {
        read(UnitSystem.OUNCE_INCH);
        Document page = page("curlew");
        BuildReview review = BuildReview.of(readings.head("curlew").build(), OUNCES);
        assertThat(term(page, "Predicted mass"))
                .isEqualTo(OUNCES.mass(review.mass().predicted()));
        assertThat(page.select("#findings .findings > li > div > span:not(.verdict)")
                        .eachText())
                .containsExactlyElementsOf(review.findings(Budget.MASS).stream()
                        .map(Finding::sentence)
                        .toList());
        assertThat(page.select("th:contains(Basic, oz)")).isNotEmpty();
        assertThat(page.expectFirst("main").text()).doesNotContainPattern("\\d\u2009k?g\\b");
    }

    @Test
    void hostileNamesAreText() {
        Build build = Airframes.withTwoParts(fresh(), Airframes.target(1000));
        String name = "<script>alert(1)</script> ${7*7} __${7*7}__";
        String code = opened(build.withLines(
                List.of(Airframes.line("L1", "wing", name, LineMass.of(Mass.ofGrams(1500), Basis.GUESSED)))));
        Document page = page(code);
        assertThat(page.select("main script")).isEmpty();
        assertThat(page.select("#weigh-next ~ table a").text()).isEqualTo(name);
        assertThat(page.select("#findings").text()).contains(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/airframes/curlew/mass", "/airframes/dunlin/mass", "/airframes/godwit/mass/budget"})
    void holdsNothingThatThePolicyForbids(String path) {
        Document page = browser.open(path).document();
        assertThat(page.select("[style], style, script:not([src]), [hx-on]")).isEmpty();
        assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
    }

    @Test
    void anAirframeThatIsNotThereIsNotFound() {
        assertThat(browser.open("/airframes/heron/mass").status()).isEqualTo(404);
        assertThat(browser.open("/airframes/heron/mass/budget").status()).isEqualTo(404);
    }
}
