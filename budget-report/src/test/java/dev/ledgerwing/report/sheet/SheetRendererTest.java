package dev.ledgerwing.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import com.google.zxing.ReaderException;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Supply;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;

class SheetRendererTest {

    private static final String ADDRESS = "http://127.0.0.1:8080/airframes/skiff";
    private static final SheetHead HEAD =
            new SheetHead("12", LocalDate.of(2026, 11, 24), "Mara", "0123456789abcdef".repeat(4), ADDRESS);
    private static final PageStyles PAPER = PageStyles.inFolder("paper/");
    private static final SheetRenderer RENDERER = new SheetRenderer();

    @Test
    void printsThePageAsBefore() throws IOException {
        Golden.assertMatches("build-sheet.html", RENDERER.html(sheet(Builds.skiff()), PAPER));
    }

    @Test
    void makesWellFormedXmlOfEveryPage() {
        assertThatCode(() -> DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(RENDERER.html(sheet(Builds.skiff()), PAPER)))))
                .doesNotThrowAnyException();
    }

    @Test
    void carriesNothingThatAStrictContentPolicyBlocks() {
        assertThat(RENDERER.html(sheet(Builds.skiff()), PAPER))
                .doesNotContain("style=", "<style", "<script", "javascript:", "onclick");
    }

    @Test
    void showsMarkupInNamesAsText() {
        String page = RENDERER.html(sheet(Builds.skiff()), PAPER);

        assertThat(page)
                .doesNotContain("<script>alert")
                .contains("=cmd()|&#39;&lt;script&gt;alert(1)&lt;/script&gt;&amp;&quot;");
    }

    @Test
    void linksToStyleSheetsWhereTheyAreServed() {
        String page =
                RENDERER.html(sheet(Builds.skiff()), PageStyles.at(path -> "/paper/" + path.replace(".", "-1a2b.")));

        assertThat(page)
                .contains("<link rel=\"stylesheet\" href=\"/paper/sheet-1a2b.css\"/>")
                .contains("<link rel=\"stylesheet\" media=\"screen\" href=\"/paper/screen-1a2b.css\"/>")
                .doesNotContain("pdf.css");
    }

    @Test
    void showsTheWayBackOnlyWhereThereIsOne() {
        BuildSheet sheet = sheet(Builds.skiff());

        assertThat(RENDERER.html(sheet, PAPER)).doesNotContain("Fleet</a>");
        assertThat(RENDERER.html(sheet, PAPER, List.of(new PageLink("index.html", "Fleet"))))
                .contains("<a href=\"index.html\">Fleet</a>");
    }

    @Test
    void printsEverythingOnPaperThatIsOnThePage() throws IOException {
        String text = String.join("\n", Pdf.pages(RENDERER.pdf(sheet(Builds.skiff()))));

        assertThat(text)
                .contains("Skiff Żółw", "0123 4567 89ab", "24 Nov 2026", "Mara")
                .contains("Hull shell, glass on foam", "412.5", "−12.5", Builds.HOSTILE_NAME)
                .contains("not known", "at least", "Not aboard in “Survey”, in no sum", "Bench stand")
                .contains("Weighed, g", "Weighed by", "Propeller.", "Estimates are estimates.")
                .contains("Local aviation rules and qualified judgement come first.");
    }

    @Test
    void printsEachCharacterWithAFontOfItsOwn() throws IOException {
        Build build = Builds.called(Builds.complete(), "skiff", "−Δ●▲◐◇ŻЖΩ€→½≤“…”");
        byte[] pdf = RENDERER.pdf(sheet(build));

        assertThat(Pdf.pages(pdf).get(0)).contains("−Δ●▲◐◇ŻЖΩ€→½≤“…”").doesNotContain("▯", "#");
        assertThat(Pdf.fontsNotEmbedded(pdf)).isEmpty();
    }

    @Test
    void looksForNoFontsOnTheMachine() {
        RENDERER.pdf(sheet(Builds.skiff()));

        assertThat(FontMappers.instance()).isInstanceOf(OwnFonts.class);
    }

    @Test
    void repeatsTableHeadsAndCountsPages() throws IOException {
        List<String> pages = Pdf.pages(RENDERER.pdf(curlew()));

        assertThat(pages).hasSizeGreaterThan(3);
        for (int page = 1; page <= pages.size(); page++) {
            assertThat(pages.get(page - 1))
                    .as("page " + page)
                    .contains("page " + page + " of " + pages.size())
                    .contains("revision 12, 24 Nov 2026, fingerprint 0123 4567 89ab");
        }
    }

    @Test
    void headsThePartsOnEveryPageThatHasSome() throws IOException {
        List<String> pages = Pdf.pages(RENDERER.pdf(curlew()));

        assertThat(pages.stream().filter(page -> page.contains("Each, g")))
                .hasSizeGreaterThan(2)
                .containsAll(pages.stream()
                        .filter(page -> page.contains("weighed\n") || page.contains("catalogue"))
                        .filter(page -> page.lines().anyMatch(line -> line.matches(".* weighed \\S+")))
                        .toList());
    }

    @Test
    void leavesNoAssemblyAloneAtTheFootOfAPageAndSplitsNoRow() throws IOException {
        List<String> pages = Pdf.pages(RENDERER.pdf(curlew()));

        assertThat(pages).allSatisfy(page -> {
            List<String> lines = page.lines().toList();
            assertThat(lines.get(lines.size() - 2)).doesNotContainPattern("\\d lines?\\b");
        });
        assertThat(pages)
                .anySatisfy(page -> assertThat(page)
                        .contains(
                                "Main wiring loom",
                                "Lengths measured along the pod; the spread is that of",
                                "the plugs."));
    }

    @Test
    void keepsWithinThePaperWhateverTheLengthOfANameIs() throws IOException {
        Build build = Builds.called(Builds.skiff(), "skiff", "n".repeat(200));
        Build withLongLines = build.withLines(
                build.lines().stream().map(SheetRendererTest::longNamed).toList());

        byte[] pdf = RENDERER.pdf(sheet(withLongLines));

        assertThat(Pdf.rightmostMm(pdf)).isLessThanOrEqualTo(210 - 13);
        assertThat(String.join("", Pdf.pages(pdf)).replaceAll("\\s", "")).contains("x".repeat(200), "p".repeat(80));
    }

    private static PartLine longNamed(PartLine line) {
        return new PartLine(
                line.id(),
                line.assembly(),
                "x".repeat(200),
                line.category(),
                line.quantity(),
                line.mass(),
                line.place(),
                line.state(),
                new Supply("p".repeat(80), List.of(), null, null),
                "o".repeat(2000),
                line.serves(),
                line.electrical(),
                line.needs());
    }

    @Test
    void givesEqualBytesForEqualSheets() {
        assertThat(RENDERER.pdf(curlew())).isEqualTo(new SheetRenderer().pdf(curlew()));
    }

    @Test
    void printsACodeThatACameraReads() throws IOException, ReaderException {
        assertThat(Pdf.code(RENDERER.pdf(sheet(Builds.skiff())))).isEqualTo(ADDRESS);
    }

    @Test
    void printsTheFingerprintAsCodeWhereThePageIsNotKnown() throws IOException, ReaderException {
        BuildSheet sheet = BuildSheet.of(BuildReview.of(Builds.skiff()), SheetHead.draft("0123456789abcdef".repeat(4)));

        assertThat(Pdf.code(RENDERER.pdf(sheet))).isEqualTo("sha256:" + "0123456789abcdef".repeat(4));
    }

    @ParameterizedTest(name = "{index}")
    @ValueSource(strings = {"\uFFFE", "\u0085", "\u202E", "]]>", "&amp;", "<![CDATA[", "\u0636\u0639", "\uD83D\uDEE9"})
    void printsWhateverANameHolds(String strange) throws IOException {
        Build build = Builds.called(Builds.complete(), "skiff", "Skiff " + strange + " II");

        assertThat(Pdf.pages(RENDERER.pdf(sheet(build))).get(0)).contains("Skiff", "II");
    }

    @Test
    void printsAnAirframeWithNothingInItYet() throws IOException {
        Build blank = Build.blank(Builds.skiff().airframe(), Builds.skiff().budget());

        assertThat(Pdf.pages(RENDERER.pdf(sheet(blank))))
                .hasSize(1)
                .first()
                .asString()
                .contains("not known");
    }

    private static BuildSheet curlew() {
        return sheet(SeedFleet.airframes().get(0).last().build());
    }

    private static BuildSheet sheet(Build build) {
        return BuildSheet.of(BuildReview.of(build), HEAD);
    }
}
