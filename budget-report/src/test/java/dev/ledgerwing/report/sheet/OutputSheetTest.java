package dev.ledgerwing.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.RadioBuilds;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

class OutputSheetTest {

    private static final SheetHead HEAD = new SheetHead(
            "12",
            LocalDate.of(2026, 11, 24),
            "Mara",
            "0123456789abcdef".repeat(4),
            "http://127.0.0.1:8080/airframes/skiff");
    private static final PageStyles PAPER = PageStyles.inFolder("paper/");
    private static final SheetRenderer RENDERER = new SheetRenderer();

    @Test
    void printsThePageAsBefore() throws IOException {
        Golden.assertMatches("output-sheet.html", RENDERER.html(sheet(RadioBuilds.driven()), PAPER));
    }

    @Test
    void makesWellFormedXmlThatAStrictContentPolicyLetsThrough() {
        for (Build build : List.of(Builds.complete(), RadioBuilds.driven())) {
            String page = RENDERER.html(sheet(build), PAPER);

            assertThat(page).doesNotContain("style=", "<style", "<script", "javascript:", "onclick");
            assertThatCode(() -> DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new InputSource(new StringReader(page))))
                    .doesNotThrowAnyException();
        }
    }

    @Test
    void listsOutputsByNumberAndThoseWithoutOneLast() {
        assertThat(sheet(RadioBuilds.driven()).outputs())
                .extracting(OutputEntry::number)
                .containsExactly("1", "2", "2", "5", "99", "–");
    }

    @Test
    void givesTravelAndSenseOfAServoAndNoneOfWhatIsSwitched() {
        List<OutputEntry> outputs = sheet(RadioBuilds.driven()).outputs();

        assertThat(outputs.get(1).ends()).isEqualTo("1000 to 2000\u2009µs");
        assertThat(outputs.get(1).rest()).isEqualTo("1500\u2009µs");
        assertThat(outputs.get(1).sense()).isEqualTo("reversed");
        assertThat(outputs.get(3).ends()).isEqualTo("–");
    }

    @Test
    void marksDoubleUseAndWhatTheBoardHasNot() {
        assertThat(sheet(RadioBuilds.driven()).outputs())
                .filteredOn(output -> List.of("2", "99").contains(output.number()))
                .hasSize(3)
                .allSatisfy(output ->
                        assertThat(output.mark()).extracting(VerdictMark::kind).isEqualTo("breaks"));
    }

    @Test
    void putsTheCandidatesSideBySideOnlyWhereThereAreSeveral() {
        Build driven = RadioBuilds.driven();

        assertThat(sheet(driven).boards()).extracting(BoardEntry::aboard).containsExactly(true, false);
        assertThat(sheet(driven.withBoards(driven.outputs().boards().subList(0, 1)))
                        .boards())
                .isEmpty();
    }

    @Test
    void namesOfTheDemoFleetWhatNothingDrives() {
        Build curlew = SeedFleet.airframes().stream()
                .map(airframe -> airframe.last().build())
                .filter(build -> build.airframe().code().equals("curlew"))
                .findFirst()
                .orElseThrow();

        assertThat(sheet(curlew).undriven())
                .containsExactly("Servo, gear door: 2 of 2 driven by nothing, 2 outputs are missing.");
        assertThat(sheet(curlew).ports())
                .contains(new PortEntry("Airspeed sensor", "", "0x28", "", ""))
                .contains(new PortEntry("Current sensor, 90 A", "", "", "", "2"));
    }

    @Test
    void printsEverythingOnPaperThatIsOnThePage() throws IOException {
        byte[] pdf = RENDERER.pdf(sheet(RadioBuilds.driven()));
        String text = String.join("\n", Pdf.pages(pdf));

        assertThat(text)
                .contains("Wiring and outputs sheet", "Skiff Żółw", "0123 4567 89ab")
                .contains("NOT TO BE WIRED", "Disconnect every pack", "Check the polarity of each plug")
                .contains("Banks and outputs", "What hangs on each output", "The candidates side by side")
                .doesNotContain("▯", "#");
        assertThat(Pdf.fontsNotEmbedded(pdf)).isEmpty();
        assertThat(Pdf.rightmostMm(pdf)).isLessThanOrEqualTo(210 - 13);
    }

    @Test
    void staysOnThePaperForTheWholeDemoFleet() throws IOException {
        for (var airframe : SeedFleet.airframes()) {
            assertThat(Pdf.rightmostMm(RENDERER.pdf(sheet(airframe.last().build()))))
                    .isLessThanOrEqualTo(210 - 13);
        }
    }

    @Test
    void printsAnAirframeWithNothingInItYet() throws IOException {
        Build blank = Build.blank(Builds.skiff().airframe(), Builds.skiff().budget());

        assertThat(sheet(blank).verdict()).isEqualTo(new VerdictMark("unknown", "not known"));
        assertThat(String.join("\n", Pdf.pages(RENDERER.pdf(sheet(blank)))))
                .contains("No output is recorded yet.", "No part needs a port.");
    }

    private static OutputSheet sheet(Build build) {
        return OutputSheet.of(BuildReview.of(build), HEAD);
    }
}
