package dev.ledgerwing.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.LedgerwingApplication;
import dev.ledgerwing.web.desk.Readings;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * A squeeze from nothing: three functions that all must be selectable, two channels, a switch of three positions and two of two. The
 * page says why that cannot be and what would do; one concession is taken, the channels are planned, the sheet is printed.
 */
@SpringBootTest(
        classes = LedgerwingApplication.class,
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:h2:mem:radio-walk;DB_CLOSE_DELAY=-1")
class RadioWalkIT {

    private static final String RADIO = "/airframes/snipe/radio";
    private static final String WHY = "By the sound alone we find it in daylight";

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Test
    void fromASqueezeThroughAConcessionToThePrintedSheet() throws IOException {
        try (Chromium chromium = new Chromium()) {
            Page page = chromium.page(port, 1280, ColorScheme.LIGHT);
            SignIn.on(page);
            openTheAirframe(page);
            enterTheLink(page);
            enterTheControls(page);
            enterTheFunctions(page);
            enterThePhases(page);
            enterTheDemands(page);

            assertThat(page.locator("main > .sentence")).containsText("2 channels, 3 needed: does not fit.");
            assertThat(page.locator("section[aria-labelledby=because]")).containsText("Lights");
            assertThat(Chromium.barriers(page)).isEmpty();
            assertThat(readings.head("snipe").review().verdict(Budget.RADIO)).isEqualTo(Verdict.BREAKS);

            takeTheConcession(page);
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Record this plan"))
                    .click();
            assertThat(page.locator(".impact .change")).containsText("Channels planned");
            assertThat(page.locator("section[aria-labelledby=couplings]")).containsText("Lights");
            assertThat(page.locator("section[aria-labelledby=plan]")).containsText("shared by 2 functions");
            assertThat(sentencesThatDoNotHold()).isEmpty();
            assertThat(Chromium.barriers(page)).isEmpty();

            printTheSheet(page);
            assertThat(chromium.complaints()).isEmpty();
        }
    }

    private List<String> sentencesThatDoNotHold() {
        return readings.head("snipe").review().findings(Budget.RADIO).stream()
                .filter(finding -> finding.verdict() != Verdict.HOLDS && finding.verdict() != Verdict.TIGHT)
                .map(Finding::sentence)
                .toList();
    }

    private static void openTheAirframe(Page page) {
        page.navigate("/airframes/new");
        page.getByLabel("Name").fill("Snipe");
        page.locator("main form button.btn-primary").click();
        page.navigate(RADIO);
        assertThat(page.locator(".first-steps")).containsText("The link");
    }

    private static void enterTheLink(Page page) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("The link"))
                .click();
        fill(page, "channels", "2");
        choose(page, "loss", "NO_PULSES");
        choose(page, "acts", "BOARD");
        choose(page, "learns", "SILENCE");
        save(page);
    }

    private static void enterTheControls(Page page) {
        page.navigate(RADIO + "/controls");
        add(page, "add:control:SWITCH");
        fill(page, "control.0.name", "Left switch");
        fill(page, "control.0.positions", "3");
        add(page, "add:control:SWITCH");
        fill(page, "control.1.name", "Right switch");
        fill(page, "control.1.positions", "2");
        add(page, "add:control:SWITCH");
        fill(page, "control.2.name", "Front switch");
        fill(page, "control.2.positions", "2");
        save(page);
    }

    private static void enterTheFunctions(Page page) {
        page.navigate(RADIO + "/functions");
        function(page, 0, "Camera", "MISSION", "off\non");
        function(page, 1, "Lights", "CONVENIENCE", "off\non");
        function(page, 2, "Beeper", "CONVENIENCE", "silent\nbeeping");
        save(page);
    }

    private static void function(Page page, int at, String name, String criticality, String states) {
        add(page, "add:function:SWITCHED");
        String row = "function." + at + ".";
        fill(page, row + "name", name);
        choose(page, row + "kind", "SWITCHED");
        choose(page, row + "criticality", criticality);
        fill(page, row + "states", states);
        fill(page, row + "loss", states.lines().findFirst().orElseThrow());
        choose(page, row + "decoded", "TABLE");
    }

    private static void enterThePhases(Page page) {
        page.navigate("/airframes/snipe/power/phases");
        add(page, "add:phase");
        fill(page, "phase.0.name", "Power on");
        add(page, "add:phase");
        fill(page, "phase.1.name", "Survey");
        save(page);
        page.navigate("/airframes/snipe/power/phases");
        page.locator("[name='phase.0.next'][value=survey]").check();
        save(page);
    }

    private static void enterTheDemands(Page page) {
        page.navigate(RADIO + "/demands");
        tick(page, "may-camera.power-on", "off");
        tick(page, "may-lights.power-on", "off");
        tick(page, "may-beeper.power-on", "silent");
        for (String state : List.of("off", "on")) {
            tick(page, "must-camera.survey", state);
            tick(page, "must-lights.survey", state);
        }
        for (String state : List.of("silent", "beeping")) {
            tick(page, "must-beeper.survey", state);
        }
        save(page);
    }

    private void takeTheConcession(Page page) {
        Locator way = page.locator(".ways > li")
                .filter(new Locator.FilterOptions().setHasText("Give up Lights on and Beeper beeping in Survey"));
        way.getByLabel("Why").fill(WHY);
        way.getByRole(AriaRole.BUTTON).click();
        assertThat(page.locator(".impact")).isVisible();
        assertThat(page.locator("section[aria-labelledby=because]")).hasCount(0);
        assertThat(readings.head("snipe").build().radio().notNeeded()).singleElement().satisfies(given -> {
            assertThat(given.by()).isEqualTo("Mara");
            assertThat(given.why()).isEqualTo(WHY);
        });
    }

    private void printTheSheet(Page page) throws IOException {
        int number = readings.head("snipe").revision().number();
        page.navigate("/airframes/snipe/sheets/" + number + "/radio.html");
        page.evaluate("document.fonts.ready.then(() => true)"); // text is blank on paper until its font is there
        try (PDDocument paper = Loader.loadPDF(page.pdf(new Page.PdfOptions().setFormat("A4")))) {
            assertThat(new PDFTextStripper().getText(paper)).contains("Snipe", "Left switch", "Camera", "beeping");
        }
    }

    private static void fill(Page page, String field, String text) {
        page.locator("[name='" + field + "']").fill(text);
    }

    private static void choose(Page page, String field, String value) {
        page.locator("[name='" + field + "']").selectOption(value);
    }

    private static void tick(Page page, String field, String state) {
        page.locator("[name='" + field + "'][value='" + state + "']").check();
    }

    private static void add(Page page, String what) {
        page.locator("button[name=row][value='" + what + "']").click();
    }

    private static void save(Page page) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Save").setExact(true))
                .click();
        assertThat(page.locator(".impact")).isVisible();
    }
}
