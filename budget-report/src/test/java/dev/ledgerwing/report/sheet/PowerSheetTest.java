package dev.ledgerwing.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.Pack.Chemistry;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.PowerBuilds;
import dev.ledgerwing.report.sheet.FeedEntry.ElementEntry;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

class PowerSheetTest {

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
        Golden.assertMatches("power-sheet.html", RENDERER.html(sheet(PowerBuilds.sunny()), PAPER));
        Golden.assertMatches("power-sheet-unknown.html", RENDERER.html(sheet(PowerBuilds.twoPacksUnrated()), PAPER));
    }

    @Test
    void makesWellFormedXmlThatAStrictContentPolicyLetsThrough() {
        for (Build build : List.of(Builds.complete(), PowerBuilds.tangled(), PowerBuilds.sunny())) {
            String page = RENDERER.html(sheet(build), PAPER);

            assertThat(page).doesNotContain("style=", "<style", "<script", "javascript:", "onclick");
            assertThatCode(() -> DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new InputSource(new StringReader(page))))
                    .doesNotThrowAnyException();
        }
    }

    @Test
    void listsEveryElementOfEveryFeedWithItsRating() {
        Build build = PowerBuilds.twoPacks();
        List<FeedEntry> ratings = sheet(build).ratings();

        assertThat(ratings)
                .extracting(FeedEntry::name)
                .containsExactly("Main feed", "First leg", "Second leg", "Servo feed");
        assertThat(ratings.get(0).way()).isEqualTo("from Flight pack to Motor");
        assertThat(ratings.get(0).elements())
                .extracting(ElementEntry::name)
                .containsExactly("Main plug", "Main fuse", "Motor wire", "Current sensor", "Motor controller");
        assertThat(ratings.get(0).elements().get(1).rating()).isEqualTo("40\u2009A");
    }

    @Test
    void marksAFuseWithTheWiresItProtects() {
        assertThat(elements(sheet(PowerBuilds.twoPacks())))
                .extracting(ElementEntry::note)
                .contains("fuse, protects “Motor wire”", "breaker, protects “Servo wire”", "wire, 20 AWG");
    }

    @Test
    void neverShowsAnElementWithoutARatingAsFine() {
        assertThat(elements(sheet(PowerBuilds.twoPacksUnrated())))
                .filteredOn(element -> element.rating().equals("not known"))
                .isNotEmpty()
                .allSatisfy(element -> {
                    assertThat(element.load()).isEqualTo("not known");
                    assertThat(element.verdict().kind()).isEqualTo("unknown");
                });
    }

    @Test
    void givesLimitsOfAPackAsAWhole() {
        BatteryEntry pack = sheet(PowerBuilds.twoPacks()).batteries().get(0);

        // 4 cells of 4.2, 3.7 and 3.0 V; 5 Ah at 25 C, 40 C and 1 C; 3.8 V a cell to store
        assertThat(pack.volts()).isEqualTo("16.8 / 14.8 / 12\u2009V");
        assertThat(pack.capacity()).isEqualTo("5000\u2009mAh");
        assertThat(pack.usable()).isEqualTo("4000\u2009mAh");
        assertThat(pack.continuous()).isEqualTo("125\u2009A");
        assertThat(pack.burst()).isEqualTo("200\u2009A");
        assertThat(pack.charge()).isEqualTo("5\u2009A");
        assertThat(pack.storage()).isEqualTo("15.2\u2009V");
    }

    @Test
    void givesNoStorageVoltageAboveWhatACellMayHave() {
        for (Chemistry chemistry : List.of(Chemistry.LITHIUM_IRON_PHOSPHATE, Chemistry.NICKEL_METAL_HYDRIDE)) {
            Pack pack = new Pack(chemistry, 4, 1, 2500.0, 20.0, null, 8.0, 80.0, 1.0, null, null, null, true);
            Build build = Builds.complete().withSources(List.of(PowerSource.battery("pack", "Pack", null, pack)));

            assertThat(sheet(build).batteries()).singleElement().satisfies(battery -> {
                assertThat(battery.storage()).isEqualTo("as its maker says");
                assertThat(battery.burst()).isEqualTo("not known");
            });
        }
    }

    @Test
    void saysWhatGoesDarkWhenAThingFailsAndNamesTheHarmlessRest() {
        PowerSheet sheet = sheet(PowerBuilds.twoPacks());

        assertThat(sheet.failures()).anySatisfy(row -> {
            assertThat(row.what()).isEqualTo("The fuse “Main fuse” in “Main feed” fails open");
            assertThat(row.rails()).isEqualTo("Motor dark");
        });
        assertThat(Stream.concat(sheet.failures().stream().map(FailureEntry::what), sheet.harmless().stream()))
                .anyMatch(what -> what.contains("Diode, first leg"));
    }

    @Test
    void saysThatTheFlightHoldsOnlyWhereItIsKnownWhatTheFlightHangsOn() {
        PowerSheet unsaid = sheet(PowerBuilds.twoPacks());
        PowerSheet said = sheet(PowerBuilds.supplied(Builds.winged()));

        assertThat(unsaid.failures())
                .isNotEmpty()
                .noneMatch(row -> row.verdict().kind().equals("holds"));
        assertThat(unsaid.facts())
                .filteredOn(fact -> fact.label().equals("Single failures"))
                .singleElement()
                .extracting(Fact::value)
                .isEqualTo("not known");
        assertThat(said.failures()).isNotEmpty().allSatisfy(row -> {
            assertThat(row.flight()).isEqualTo("Rudder");
            assertThat(row.verdict().kind()).isEqualTo("tight");
        });
    }

    @Test
    void showsTheDayOnlyWhereOneIsLookedAt() {
        assertThat(RENDERER.html(sheet(PowerBuilds.sunny()), PAPER)).contains("A day in the sun");
        assertThat(RENDERER.html(sheet(PowerBuilds.twoPacks()), PAPER)).doesNotContain("A day in the sun");
    }

    @Test
    void printsEverythingOnPaperThatIsOnThePage() throws IOException {
        byte[] pdf = RENDERER.pdf(sheet(PowerBuilds.sunny()));
        String text = String.join("\n", Pdf.pages(pdf));

        assertThat(text)
                .contains("Power sheet", "Skiff Żółw", "0123 4567 89ab")
                .contains("Lithium packs burn.", "Never unattended.", "current limit, propeller off")
                .contains("Local rules and licensed practice come first")
                .contains("Ratings and fuses", "When one thing fails", "Charging aboard", "A day in the sun")
                .doesNotContain("▯", "#");
        assertThat(Pdf.fontsNotEmbedded(pdf)).isEmpty();
        assertThat(Pdf.rightmostMm(pdf)).isLessThanOrEqualTo(210 - 13);
    }

    @Test
    void staysOnThePaperForTheWholeDemoFleet() throws IOException {
        for (var airframe : SeedFleet.airframes()) {
            byte[] pdf = RENDERER.pdf(sheet(airframe.last().build()));

            assertThat(Pdf.rightmostMm(pdf)).isLessThanOrEqualTo(210 - 13);
        }
    }

    @Test
    void givesEqualBytesForEqualSheets() {
        assertThat(RENDERER.pdf(sheet(PowerBuilds.sunny())))
                .isEqualTo(new SheetRenderer().pdf(sheet(PowerBuilds.sunny())));
    }

    @Test
    void printsAnAirframeWithNothingInItYet() throws IOException {
        Build blank = Build.blank(Builds.skiff().airframe(), Builds.skiff().budget());
        PowerSheet sheet = sheet(blank);

        assertThat(sheet.power()).isEqualTo(new VerdictMark("unknown", "not known"));
        assertThat(sheet.endurance()).noneMatch(fact -> fact.note().equals("they fit in"));
        assertThat(String.join("\n", Pdf.pages(RENDERER.pdf(sheet)))).contains("No rail is recorded yet.", "Caution");
    }

    private static List<ElementEntry> elements(PowerSheet sheet) {
        return sheet.ratings().stream()
                .flatMap(feed -> feed.elements().stream())
                .toList();
    }

    private static PowerSheet sheet(Build build) {
        return PowerSheet.of(BuildReview.of(build), HEAD);
    }
}
