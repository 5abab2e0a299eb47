package dev.ledgerwing.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import dev.ledgerwing.seed.SeedFleet;
import dev.ledgerwing.web.LedgerwingApplication;
import dev.ledgerwing.web.desk.Readings;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A builder's first day: first visit, a new airframe, its parts table in, a part too many, undo, and the sheet on paper. */
@SpringBootTest(
        classes = LedgerwingApplication.class,
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:h2:mem:first-day;DB_CLOSE_DELAY=-1")
class FirstDayWalkIT {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Test
    void fromTheFirstVisitToThePrintedSheet() throws IOException {
        try (Chromium chromium = new Chromium()) {
            Page page = chromium.page(port, 1280, ColorScheme.LIGHT);
            SignIn.on(page);

            page.getByText("New airframe").click();
            page.getByLabel("Name").fill("Snipe");
            page.getByLabel("Target mass, all up").fill("0.4 kg");
            page.getByText("Open the airframe").click();
            assertThat(page.locator("main")).containsText("Nothing is in this airframe yet");

            importTheTable(page);
            assertThat(page.locator(".impact")).containsText("predicted");
            assertThat(readings.head("snipe").build().lines()).hasSize(25);
            assertThat(readings.history("snipe")).hasSize(2);

            page.getByText("Add a part").click();
            page.getByLabel("Part", new Page.GetByLabelOptions().setExact(true)).fill("Towing hook");
            page.getByLabel("Mass each, g").fill("1 lb");
            page.getByLabel("Category").selectOption("STRUCTURE");
            page.getByText("Add the part").click();
            assertThat(page.locator(".impact")).containsText("breaks the target by");
            page.getByText("Show fixes").click();
            assertThat(page.locator("#findings")).containsText("breaks");
            page.goBack();

            page.navigate("/airframes/snipe/history");
            page.getByText("Towing hook added").first().click();
            assertThat(page.locator("main")).containsText("Towing hook");
            page.navigate("/airframes/snipe/parts");
            page.getByText("Towing hook").first().click();
            page.getByText("Remove this part").click();
            assertThat(page.locator(".impact")).containsText("Towing hook removed");
            page.getByText("Undo").click();
            assertThat(page.locator(".impact")).containsText("taken back");

            page.navigate("/airframes/snipe/sheets");
            page.locator(".btn[href$='/build.html']").click();
            assertThat(page.locator("body")).containsText("Local aviation rules");
            page.evaluate("document.fonts.ready.then(() => true)"); // text is blank on paper until its font is there
            String paper = text(page.pdf(new Page.PdfOptions().setFormat("A4")));
            assertThat(paper).contains("Snipe").contains("Towing hook").contains("Float keel strip, ash");
            assertThat(chromium.complaints()).isEmpty();
        }
    }

    private static void importTheTable(Page page) {
        page.getByText("Import a table").click();
        page.locator("input[type=file]")
                .setInputFiles(new FilePayload("floats.csv", "text/csv", SeedFleet.partsTable()));
        page.getByText("Read the file").click();
        assertThat(page.locator("main")).containsText("25 parts can be imported");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Import 25 parts"))
                .click();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }
}
