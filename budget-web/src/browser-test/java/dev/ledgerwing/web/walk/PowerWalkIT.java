package dev.ledgerwing.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.LedgerwingApplication;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Signature;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Two packs through diodes from nothing; they hold; with one leg taken out a function hangs on a single diode; the sheet is printed. */
@SpringBootTest(
        classes = LedgerwingApplication.class,
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:h2:mem:power-walk;DB_CLOSE_DELAY=-1")
class PowerWalkIT {

    private static final String POWER = "/airframes/snipe/power";

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    private void openAReceiverAndNothingElse() {
        PartLine receiver = PartLine.named(
                "L1", "nose", "Radio receiver", Category.RADIO, 1, LineMass.of(Mass.ofGrams(12), Basis.WEIGHED));
        desk.open(
                Build.blank(
                                new Airframe("snipe", "Snipe", null, Stage.DESIGN, "nose tip"),
                                new MassBudget(Mass.ofGrams(2000), null, null, null))
                        .withAssemblies(List.of(new Assembly("nose", "Nose", Assembly.MovesWith.NOSE)))
                        .withLines(List.of(receiver)),
                new Signature("Mara", ""));
    }

    @Test
    void fromNothingToTwoPacksThroughDiodesOneLegLessAndThePrintedSheet() throws IOException {
        try (Chromium chromium = new Chromium()) {
            Page page = chromium.page(port, 1280, ColorScheme.LIGHT);
            SignIn.on(page);
            openAReceiverAndNothingElse();
            page.navigate(POWER);
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Two packs through diodes"))
                    .click();
            assertThat(page.locator(".impact .change")).containsText("Two packs through diodes");
            assertThat(readings.head("snipe").review().verdict(Budget.POWER)).isNotIn(Verdict.HOLDS, Verdict.TIGHT);

            nameTheFunction(page);
            hangTheReceiverOn(page);
            limitTheRail(page);
            for (String pack : List.of("pack-a", "pack-b")) {
                enterThePack(page, pack);
            }
            for (String feed : List.of("feed-1", "feed-2")) {
                enterTheElements(page, feed);
            }
            assertThat(page.locator("section[aria-labelledby=rails]")).containsText("holds");
            assertThat(page.locator("section[aria-labelledby=elements]")).not().containsText("not known");
            assertThat(sentencesThatDoNotHold()).isEmpty();

            page.navigate(POWER + "?failed=element.feed-1.4");
            assertThat(page.locator("#failed")).containsText("Nothing is lost: “Supply, 5 V” keeps at least 5.1");
            assertThat(Chromium.barriers(page)).isEmpty();

            page.navigate(POWER + "/feeds/feed-1");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Remove").setExact(true))
                    .last()
                    .click();
            assertThat(page.locator(".impact")).isVisible();
            failure(page, "element.feed-2.4").click();
            assertThat(page.locator("#failed")).containsText("Aileron goes dark: the flight depends on it.");

            printTheSheet(page);
            assertThat(chromium.complaints()).isEmpty();
        }
    }

    /** What breaks or is not known; that one failure loses a function is tight at worst. */
    private List<String> sentencesThatDoNotHold() {
        return readings.head("snipe").review().findings(Budget.POWER).stream()
                .filter(finding -> finding.verdict() != Verdict.HOLDS && finding.verdict() != Verdict.TIGHT)
                .map(Finding::sentence)
                .toList();
    }

    private static Locator failure(Page page, String key) {
        return page.locator("section[aria-labelledby=failures] a[href*='failed=" + key + "']")
                .first();
    }

    private static void nameTheFunction(Page page) {
        page.navigate("/airframes/snipe/radio/functions");
        page.getByText("Add a proportional function").click();
        page.locator("[name='function.0.name']").fill("Aileron");
        page.locator("[name='function.0.kind']").selectOption("PROPORTIONAL");
        page.locator("[name='function.0.criticality']").selectOption("FLIGHT");
        save(page);
    }

    private static void hangTheReceiverOn(Page page) {
        page.navigate(POWER + "/loads/L1");
        page.getByText("Add a load").click();
        page.locator("[name='load.0.rail']").selectOption("supply-5v");
        page.locator("[name='load.0.typical']").fill("120 mA");
        page.locator("[name='load.0.peak']").fill("0.25 A");
        page.locator("[name='load.0.min']").fill("4.5");
        page.locator("[name='load.0.max']").fill("6");
        page.locator("[name='serves']").check();
        save(page);
    }

    private static void limitTheRail(Page page) {
        page.navigate(POWER + "/rails/supply-5v");
        page.locator("[name='min']").fill("4.8");
        page.locator("[name='max']").fill("5.6");
        save(page);
    }

    private static void enterThePack(Page page, String pack) {
        page.navigate(POWER + "/sources/" + pack);
        page.locator("[name='capacity']").fill("1600 mAh");
        page.locator("[name='usable']").fill("80");
        page.locator("[name='resistance']").fill("14");
        page.locator("[name='continuous']").fill("10");
        page.locator("[name='burst']").fill("20");
        page.locator("[name='charge']").fill("1");
        page.locator("[name='empty']").fill("3.3");
        save(page);
    }

    /** Plug, fuse, regulator and diode, in this order. */
    private static void enterTheElements(Page page, String feed) {
        page.navigate(POWER + "/feeds/" + feed);
        page.evaluate("document.querySelectorAll('form details').forEach(folded => folded.open = true)");
        element(page, 0, "rating", "20 A");
        element(page, 0, "resistance", "1");
        element(page, 1, "rating", "3 A");
        element(page, 1, "resistance", "20");
        element(page, 2, "rating", "3 A");
        element(page, 2, "efficiency", "90");
        element(page, 2, "dropout", "0.4");
        element(page, 2, "minInput", "6");
        element(page, 2, "maxInput", "20");
        element(page, 2, "quiescent", "0.01");
        element(page, 3, "rating", "3 A");
        element(page, 3, "forward", "0.38");
        save(page);
    }

    private static void element(Page page, int index, String field, String text) {
        page.locator("[name='element." + index + "." + field + "']").fill(text);
    }

    private static void save(Page page) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Save").setExact(true))
                .click();
        assertThat(page.locator(".impact")).isVisible();
    }

    private void printTheSheet(Page page) throws IOException {
        int number = readings.head("snipe").revision().number();
        page.navigate("/airframes/snipe/sheets/" + number + "/power.html");
        page.evaluate("document.fonts.ready.then(() => true)"); // text is blank on paper until its font is there
        try (PDDocument paper = Loader.loadPDF(page.pdf(new Page.PdfOptions().setFormat("A4")))) {
            assertThat(new PDFTextStripper().getText(paper)).contains("Snipe", "Pack B", "Supply, 5 V");
        }
    }
}
