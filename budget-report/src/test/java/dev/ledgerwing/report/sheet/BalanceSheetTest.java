package dev.ledgerwing.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.AssemblyBooking;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.sheet.MomentTable.MomentRow;
import dev.ledgerwing.report.sheet.SupportGuide.Support;
import dev.ledgerwing.seed.SeedFleet;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.xml.sax.InputSource;

class BalanceSheetTest {

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
        Golden.assertMatches("balance-sheet.html", RENDERER.html(sheet(Builds.winged()), PAPER));
        Golden.assertMatches("balance-sheet-unknown.html", RENDERER.html(sheet(Builds.skiff()), PAPER));
    }

    @Test
    void makesWellFormedXmlThatAStrictContentPolicyLetsThrough() {
        for (Build build : List.of(Builds.skiff(), Builds.winged())) {
            String page = RENDERER.html(sheet(build), PAPER);

            assertThat(page).doesNotContain("style=", "<style", "<script", "javascript:", "onclick");
            assertThatCode(() -> DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new InputSource(new StringReader(page))))
                    .doesNotThrowAnyException();
        }
    }

    @Test
    void measuresTheSupportsFromTheLeadingEdgeAtASpanStationOfTheWing() {
        SupportGuide guide = sheet(Builds.winged()).supports();

        assertThat(guide.how().get(0)).contains("150\u2009mm to the left and to the right of the centre line");
        // the inner panel has no sweep: its leading edge is at 260 mm everywhere
        assertThat(guide.supports())
                .extracting(Support::name)
                .containsExactly(
                        "Forward limit: nose must not drop",
                        "Middle of the band",
                        "Aft limit: tail must not drop",
                        "Where the ledger says it balances");
        for (Support support : guide.supports()) {
            double behind = number(support.place());
            double fromDatum = number(support.fromDatum());
            assertThat(support.place()).endsWith(" behind the leading edge");
            assertThat(fromDatum - behind).isEqualTo(260, within(0.11));
        }
        assertThat(guide.supports().get(0).percent()).isEqualTo("10\u2009% MAC");
    }

    @Test
    void measuresTheSupportsFromTheDescribedDatumWithoutAWing() {
        Build kit = Builds.winged().withGeometry(Geometry.NONE);

        SupportGuide guide = sheet(kit).supports();

        assertThat(guide.measured()).isEqualTo("From the datum");
        assertThat(guide.how().get(0)).endsWith("measured aft from the datum: nose tip.");
        assertThat(guide.supports())
                .singleElement()
                .extracting(Support::place)
                .asString()
                .endsWith(" behind the datum");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void givesMomentsThatAddUpToTheirTotalToTheLastDigit(UnitSystem units) {
        for (var airframe : SeedFleet.airframes()) {
            BuildReview review = BuildReview.of(airframe.last().build(), new Figures(units));
            MomentTable moments = BalanceSheet.of(review, HEAD).moments();

            for (Function<MomentRow, String> column : List.<Function<MomentRow, String>>of(
                    MomentRow::x, MomentRow::y, MomentRow::z, MomentRow::predictedX)) {
                double sum = moments.rows().stream()
                        .map(column)
                        .mapToDouble(BalanceSheetTest::number)
                        .sum();
                assertThat(sum).isEqualTo(number(column.apply(moments.total())), within(1e-6));
            }
        }
    }

    @Test
    void saysWhereToStrapThePackInEachFlightCase() {
        assertThat(sheet(Builds.winged()).straps()).singleElement().satisfies(pack -> {
            assertThat(pack.pack()).isEqualTo("Flight pack");
            assertThat(pack.measured()).contains("front of “Pack bay”");
            assertThat(pack.straps()).singleElement().satisfies(strap -> {
                assertThat(strap.loadCase()).isEqualTo("Survey");
                assertThat(strap.place()).endsWith("\u2009mm");
            });
        });
    }

    @Test
    void neverShowsACgAsKnownWhileSomethingIsNotPlaced() {
        BalanceSheet sheet = sheet(Builds.skiff());

        assertThat(sheet.balance()).isEqualTo(new VerdictMark("unknown", "not known"));
        assertThat(sheet.cases().get(0).note()).isEqualTo("design load case; 2 not placed: of the rest");
        assertThat(sheet.cases().get(0).verdict().kind()).isEqualTo("unknown");
        assertThat(sheet.cases().get(0).points()).allMatch(point -> point.mass().startsWith("at least "));
        assertThat(sheet.moments().total().mass()).startsWith("at least ");
        assertThat(sheet.facts()).anyMatch(fact -> fact.note().equals("of the rest: 2 not placed"));
        assertThat(sheet.facts())
                .filteredOn(fact -> fact.label().equals("To the side"))
                .allMatch(fact -> fact.note().startsWith("of the rest; "))
                .hasSize(1);
    }

    @Test
    void saysByHowMuchACaseBreaks() {
        Build curlew = SeedFleet.airframes().get(0).last().build();

        assertThat(sheet(curlew).balance().words()).matches("breaks by [\\d.]+\u2009mm");
    }

    @Test
    void showsWhatWasWeighedAndWhatIsBooked() {
        Build dunlin = SeedFleet.airframes().stream()
                .map(airframe -> airframe.last().build())
                .filter(build -> !build.weighIns().isEmpty())
                .findFirst()
                .orElseThrow();
        Build both = dunlin.withAssemblyBookings(
                List.of(new AssemblyBooking("wing", new Booking(Mass.ofGrams(-2), "glue sanded off"))));

        BalanceSheet sheet = sheet(both);

        // readings 946 + 886 + 143 g less three tares of 18 g
        assertThat(sheet.weighIns()).singleElement().satisfies(weighIn -> {
            assertThat(weighIn.scales()).isEqualTo("1921\u2009g");
            assertThat(weighIn.difference()).isEqualTo("+17.1\u2009g");
        });
        assertThat(sheet.bookings()).extracting(BookingEntry::mass).containsExactly("+5.1\u2009g", "−2\u2009g");
        assertThat(sheet.bookings()).extracting(BookingEntry::station).containsExactly("355.4\u2009mm", "not known");
    }

    @Test
    void printsEverythingOnPaperThatIsOnThePage() throws IOException {
        byte[] pdf = RENDERER.pdf(sheet(Builds.winged()));
        String text = String.join("\n", Pdf.pages(pdf));

        assertThat(text)
                .contains("Mass and balance sheet", "Skiff Żółw", "0123 4567 89ab")
                .contains("Neutral point", "an estimate", "Allowed band", "MAC")
                .contains("To check it on the bench", "behind the leading edge", "Where to strap the packs")
                .contains("First flights", "Propeller.", "Local aviation rules and qualified judgement come first.")
                .doesNotContain("▯", "#");
        assertThat(Pdf.fontsNotEmbedded(pdf)).isEmpty();
        assertThat(Pdf.rightmostMm(pdf)).isLessThanOrEqualTo(210 - 13);
    }

    @Test
    void drawsThePlanformOverTheWholeWidthOfThePaper() throws IOException {
        byte[] png = SheetPicture.firstPage(RENDERER.pdf(sheet(Builds.winged())));
        BufferedImage page = ImageIO.read(new ByteArrayInputStream(png));
        int from = page.getHeight() * 3 / 10;
        int to = page.getHeight() * 5 / 10;

        IntSummaryStatistics ink = IntStream.range(0, page.getWidth())
                .filter(x -> IntStream.range(from, to).anyMatch(y -> isInk(page.getRGB(x, y))))
                .summaryStatistics();

        double mmPerDot = 210.0 / page.getWidth();
        assertThat(ink.getMin() * mmPerDot).isBetween(17.0, 35.0);
        assertThat(ink.getMax() * mmPerDot).isBetween(185.0, 197.0);
    }

    private static boolean isInk(int rgb) {
        return (rgb & 0xFF) < 0x80;
    }

    @Test
    void givesEqualBytesForEqualSheets() {
        assertThat(RENDERER.pdf(sheet(Builds.winged()))).isEqualTo(new SheetRenderer().pdf(sheet(Builds.winged())));
    }

    @Test
    void printsAnAirframeWithNothingInItYet() throws IOException {
        Build blank = Build.blank(Builds.skiff().airframe(), Builds.skiff().budget());

        assertThat(String.join("\n", Pdf.pages(RENDERER.pdf(sheet(blank))))).contains("not known", "Caution");
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace('−', '-').replaceAll("[^-\\d.].*", ""));
    }

    private static BalanceSheet sheet(Build build) {
        return BalanceSheet.of(BuildReview.of(build), HEAD);
    }
}
