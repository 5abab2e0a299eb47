package dev.ledgerwing.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.LedgerwingApplication;
import dev.ledgerwing.web.desk.Readings;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** From an airframe out of its band to a correction and the printed sheet; from three readings to a booking and two more weighings. */
@SpringBootTest(
        classes = LedgerwingApplication.class,
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:h2:mem:balance-walk;DB_CLOSE_DELAY=-1")
class BalanceWalkIT {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Test
    void fromOutOfTheBandToACorrectionAndThePrintedSheet() throws IOException {
        try (Chromium chromium = new Chromium()) {
            Page page = chromium.page(port, 1280, ColorScheme.LIGHT);
            SignIn.on(page);
            page.navigate("/airframes/curlew/balance");
            assertThat(page.locator(".title-block [aria-current]")).containsText("breaks");

            page.locator("a[href*='/correction?']").first().click();
            assertThat(page.locator("main")).containsText("nothing is changed yet");
            assertThat(page.locator("svg.planform.wide")).isVisible();
            assertThat(Chromium.barriers(page)).isEmpty();
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Apply"))
                    .click();
            assertThat(page.locator(".impact")).isVisible();
            assertThat(cgVerdicts("curlew")).isNotEmpty().isSubsetOf(Verdict.HOLDS, Verdict.TIGHT);

            int number = readings.head("curlew").revision().number();
            page.navigate("/airframes/curlew/sheets/" + number + "/balance.html");
            page.evaluate("document.fonts.ready.then(() => true)"); // text is blank on paper until its font is there
            assertThat(text(page.pdf(new Page.PdfOptions().setFormat("A4"))))
                    .contains("Curlew", "Where to strap the packs", "behind the leading edge");
            assertThat(chromium.complaints()).isEmpty();
        }
    }

    /** What is said of the CG of each flight case. */
    private List<Verdict> cgVerdicts(String airframe) {
        return readings.head(airframe).review().findings(Budget.BALANCE).stream()
                .filter(finding -> finding.code().equals(BalanceFindings.CG))
                .map(Finding::verdict)
                .toList();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void fromThreeReadingsToABookingASecondWeighingAndAnAssembly() {
        try (Chromium chromium = new Chromium()) {
            Page page = chromium.page(port, 1280, ColorScheme.LIGHT);
            SignIn.on(page);
            int before = dunlin().weighIns().size();
            weigh(page, "");
            record(page);
            assertThat(dunlin().weighIns()).hasSize(before + 1);
            var booked = Objects.requireNonNull(dunlin().booking());

            weigh(page, "");
            record(page);
            assertThat(Objects.requireNonNull(dunlin().booking()).mass()).isEqualTo(booked.mass());

            weigh(page, "wing");
            record(page);
            assertThat(dunlin().bookingOf("wing")).isPresent();
            WeighIn last = dunlin().weighIns().get(before + 2);
            page.navigate("/airframes/dunlin/weigh-ins/" + last.id());
            assertThat(Chromium.barriers(page)).isEmpty();
            assertThat(chromium.complaints()).isEmpty();
        }
    }

    private Build dunlin() {
        return readings.head("dunlin").build();
    }

    /**
     * Readings 40 g above the ledger for the whole airframe, with a twentieth of it on the boom as it stands; for the wing 900 g,
     * shared out evenly over the supports that the form proposes.
     */
    private void weigh(Page page, String assembly) {
        page.navigate("/airframes/dunlin/weigh-ins/new");
        page.getByLabel("On the scales").selectOption(assembly);
        int supports = page.locator("[name$='.reading']").count();
        double basic = readings.head("dunlin").review().mass().basic().grams();
        double grams = assembly.isEmpty() ? Math.rint(basic) + 40 : 900;
        double onTheBoom = assembly.isEmpty() ? Math.rint(grams / 20) : grams / supports;
        for (int i = 0; i < supports; i++) {
            boolean boom = i == supports - 1;
            double reading = boom ? onTheBoom : (grams - onTheBoom) / (supports - 1);
            page.locator("[name='support." + i + ".reading']").fill(Double.toString(reading));
            page.locator("[name='support." + i + ".tare']").fill("0");
        }
        page.getByText("Hold it against the ledger").last().click();
        assertThat(page.locator(".scales")).isVisible();
    }

    private static void record(Page page) {
        page.locator("[name='do'][value='AS_ADVISED']").first().click();
        assertThat(page.locator(".impact")).isVisible();
    }
}
