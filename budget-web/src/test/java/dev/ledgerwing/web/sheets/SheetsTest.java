package dev.ledgerwing.web.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.TestMember;
import java.io.ByteArrayInputStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;

@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class SheetsTest {

    @Autowired
    MockMvc mvc;

    @Autowired
    Readings readings;

    private MockHttpServletResponse answer(String path) throws Exception {
        return mvc.perform(get(path).with(TestMember.mara()))
                .andExpect(status().isOk())
                .andExpect(header().exists("Content-Security-Policy"))
                .andReturn()
                .getResponse();
    }

    @Test
    void thePageLeadsToTheSheetOfTheNewestRevision() throws Exception {
        Document page = Jsoup.parse(answer("/airframes/curlew/sheets").getContentAsString());

        assertThat(page.select("main a").eachAttr("href"))
                .contains(
                        "/airframes/curlew/sheets/12/build.html",
                        "/airframes/curlew/sheets/12/build.pdf",
                        "/airframes/curlew/sheets/12/balance.html",
                        "/airframes/curlew/sheets/12/balance.pdf",
                        "/airframes/curlew/sheets/12/power.html",
                        "/airframes/curlew/sheets/12/power.pdf",
                        "/airframes/curlew/history/12/build.json");
        assertThat(page.text()).contains(readings.head("curlew").shortFingerprint());
    }

    @Test
    void theSheetListsEveryPartAndObeysThePolicy() throws Exception {
        Document sheet =
                Jsoup.parse(answer("/airframes/curlew/sheets/12/build.html").getContentAsString());

        assertThat(sheet.text())
                .contains(readings.head("curlew").build().lines().stream()
                        .map(PartLine::name)
                        .toArray(String[]::new))
                .contains("Local aviation rules and qualified judgement come first");
        assertThat(sheet.select("[style], style, script")).isEmpty();
        assertThat(sheet.select("link[rel=stylesheet]").eachAttr("href"))
                .hasSize(2)
                .allMatch(address -> address.matches("/paper/[a-z]+-[0-9a-f]{32}\\.css"));
        for (String css : sheet.select("link[rel=stylesheet]").eachAttr("href")) {
            answer(css);
        }
    }

    @Test
    void thePdfIsOfTheRevisionAskedForAndTheSameEveryTime() throws Exception {
        byte[] pdf = answer("/airframes/curlew/sheets/3/build.pdf").getContentAsByteArray();

        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text)
                    .contains("Curlew")
                    .contains("16 May 2026")
                    .contains(readings.at(new Seen("curlew", 3)).fingerprint().substring(0, 4));
        }
        assertThat(answer("/airframes/curlew/sheets/3/build.pdf").getContentAsByteArray())
                .isEqualTo(pdf);
    }

    @Test
    void theBalanceSheetDrawsTheAirframeAndObeysThePolicy() throws Exception {
        Document sheet =
                Jsoup.parse(answer("/airframes/curlew/sheets/12/balance.html").getContentAsString());

        assertThat(sheet.select("svg.planform.wide [tabindex=0]").eachAttr("aria-label"))
                .contains(
                        "Ferry without payload: basic 40.5\u202F%, 648\u202Fmm ± 3.7; predicted 41.3\u202F%, 650.3\u202Fmm ± 4.2");
        assertThat(sheet.text()).contains("behind the leading edge", "Where to strap the packs", "First flights start");
        assertThat(sheet.select("[style], style, script")).isEmpty();
    }

    @Test
    void theBalanceSheetIsOnPaperToo() throws Exception {
        byte[] pdf = answer("/airframes/dunlin/sheets/12/balance.pdf").getContentAsByteArray();

        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Dunlin", "Mass and balance sheet", "Booked on");
        }
    }

    @Test
    void thePowerSheetObeysThePolicyAndIsOnPaperToo() throws Exception {
        Document sheet =
                Jsoup.parse(answer("/airframes/curlew/sheets/12/power.html").getContentAsString());
        assertThat(sheet.text()).contains("Main diode", "Standby pack", "Lithium packs burn");
        assertThat(sheet.select("[style], style, script")).isEmpty();

        byte[] pdf = answer("/airframes/curlew/sheets/12/power.pdf").getContentAsByteArray();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document)).contains("Curlew", "Power sheet", "Avionics fuse");
        }
        assertThat(answer("/airframes/curlew/sheets/12/power.png").getContentType())
                .isEqualTo("image/png");
    }

    @Test
    void thePictureShowsAnUprightPage() throws Exception {
        byte[] png = answer("/airframes/dunlin/sheets/12/build.png").getContentAsByteArray();

        var picture = ImageIO.read(new ByteArrayInputStream(png));
        assertThat(picture.getHeight()).isGreaterThan(picture.getWidth());
    }

    @Test
    void aRevisionThatIsNotThereIsNotFound() throws Exception {
        mvc.perform(get("/airframes/curlew/sheets/99/build.pdf").with(TestMember.mara()))
                .andExpect(status().isNotFound());
    }
}
