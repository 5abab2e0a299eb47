package dev.ledgerwing.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PulseTrain;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.Builds;
import dev.ledgerwing.report.Golden;
import dev.ledgerwing.report.RadioBuilds;
import dev.ledgerwing.seed.SeedFleet;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

class RadioSheetTest {

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
        Golden.assertMatches("radio-sheet.html", RENDERER.html(sheet(RadioBuilds.shared()), PAPER));
        Golden.assertMatches("radio-sheet-no-fit.html", RENDERER.html(sheet(squeezed()), PAPER));
    }

    /** Three channels for what needs four. */
    private static Build squeezed() {
        Build shared = RadioBuilds.shared();
        return shared.withChannels(shared.radio().channels().subList(0, 3))
                .withRadioLink(new RadioLink(3, OnLoss.PRESET, ActsOnLoss.RECEIVER, null, null));
    }

    @Test
    void makesWellFormedXmlThatAStrictContentPolicyLetsThrough() {
        for (Build build : List.of(Builds.complete(), RadioBuilds.shared(), RadioBuilds.crowded(), squeezed())) {
            String page = RENDERER.html(sheet(build), PAPER);

            assertThat(page).doesNotContain("style=", "<style", "<script", "javascript:", "onclick");
            assertThatCode(() -> DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new InputSource(new StringReader(page))))
                    .doesNotThrowAnyException();
        }
    }

    @Test
    void listsEveryChannelWithWhatEachPositionCommands() {
        List<ChannelEntry> channels = sheet(RadioBuilds.shared()).channels();

        assertThat(channels).extracting(ChannelEntry::number).containsExactly(1, 2, 3, 4);
        assertThat(channels.get(3).places())
                .extracting(ChannelEntry.PlaceEntry::commands)
                .containsExactly("Wheels: down; Charging: off", "Wheels: up; Charging: on");
        assertThat(channels.get(3).onLoss()).isEqualTo("as at 1");
        assertThat(channels.get(0).places())
                .extracting(ChannelEntry.PlaceEntry::label)
                .containsExactly("–");
    }

    @Test
    void spellsOutWhatSharingTakesAway() {
        assertThat(sheet(RadioBuilds.shared()).shared()).singleElement().satisfies(shared -> {
            assertThat(shared.functions()).isEqualTo("Wheels, Charging");
            assertThat(shared.couplings()).isNotEmpty().allMatch(sentence -> sentence.endsWith("."));
        });
    }

    @Test
    void namesWhoGaveACombinationUpAndWhy() {
        assertThat(sheet(RadioBuilds.shared()).givenUp())
                .containsExactly(new GivenUpEntry(
                        "Wheels up with Charging off", "Cruise", "Mara", "the pack is never full in cruise"));
    }

    @Test
    void neverLooksLikeAValidSheetWhereThePlanDoesNotFit() throws IOException {
        RadioSheet sheet = sheet(squeezed());
        SheetWarning warning = Objects.requireNonNull(sheet.warning());

        assertThat(sheet.radio()).isEqualTo(new VerdictMark("breaks", "breaks"));
        assertThat(warning.title()).isEqualTo("This does not fit: no plan to fly with");
        assertThat(warning.reasons()).isNotEmpty();
        assertThat(Pdf.pages(RENDERER.pdf(sheet))).allMatch(page -> page.contains("NO VALID PLAN"));
    }

    @Test
    void saysOfAPlanThatNobodyHasTakenThatItIsOnlyProposed() {
        RadioSheet sheet = sheet(RadioBuilds.shared().withChannels(List.of()));

        assertThat(Objects.requireNonNull(sheet.warning()).foot()).isEqualTo("ONLY PROPOSED");
        assertThat(sheet.channels()).isNotEmpty();
    }

    @Test
    void saysThatThereIsNoPlanWhereNotEverythingIsRecorded() throws IOException {
        RadioSheet sheet = sheet(RadioBuilds.shared().withRadioLink(null));

        assertThat(Objects.requireNonNull(sheet.warning()).title()).isEqualTo("No plan: not everything is recorded");
        assertThat(String.join("\n", Pdf.pages(RENDERER.pdf(sheet)))).contains("To be recorded first: ");
    }

    @Test
    void reckonsTheGapOfATrainOfPulses() {
        // a fixed frame of 22.5 ms with eight pulses of at most 2 ms leaves 6.5 ms (a club's page on pulse trains)
        RadioLink link =
                new RadioLink(8, OnLoss.PRESET, ActsOnLoss.RECEIVER, null, new PulseTrain(22_500.0, 2000, 2500));

        assertThat(sheet(RadioBuilds.shared().withRadioLink(link)).frame())
                .extracting(Fact::value)
                .containsExactly("16000\u2009µs", "22500\u2009µs", "6500\u2009µs", "44.4 times a second");
        assertThat(sheet(RadioBuilds.shared()).frame()).isEmpty();
    }

    @Test
    void printsEverythingOnPaperThatIsOnThePage() throws IOException {
        byte[] pdf = RENDERER.pdf(sheet(RadioBuilds.shared()));
        String text = String.join("\n", Pdf.pages(pdf));

        assertThat(text)
                .contains("Radio sheet", "Skiff Żółw", "0123 4567 89ab")
                .contains("make the drive safe", "Restrain the aircraft", "throttle goes to idle or off", "Range.")
                .contains("rules and qualified judgement come first")
                .contains("Channels", "When the signal is lost", "Shared channels", "Combinations given up")
                .doesNotContain("▯", "#");
        assertThat(Pdf.fontsNotEmbedded(pdf)).isEmpty();
        assertThat(Pdf.rightmostMm(pdf)).isLessThanOrEqualTo(210 - 13);
    }

    @Test
    void staysOnThePaperForTheWholeDemoFleetAndForNamesWithoutAnEnd() throws IOException {
        for (var airframe : SeedFleet.airframes()) {
            assertThat(Pdf.rightmostMm(RENDERER.pdf(sheet(airframe.last().build()))))
                    .isLessThanOrEqualTo(210 - 13);
        }
        assertThat(Pdf.rightmostMm(RENDERER.pdf(sheet(RadioBuilds.crowded())))).isLessThanOrEqualTo(210 - 13);
    }

    @Test
    void printsAnAirframeWithNothingInItYet() throws IOException {
        Build blank = Build.blank(Builds.skiff().airframe(), Builds.skiff().budget());
        RadioSheet sheet = sheet(blank);

        assertThat(sheet.radio()).isEqualTo(new VerdictMark("unknown", "not known"));
        assertThat(String.join("\n", Pdf.pages(RENDERER.pdf(sheet))))
                .contains("No channel carries anything.", "No function is recorded yet.");
    }

    private static RadioSheet sheet(Build build) {
        return RadioSheet.of(BuildReview.of(build), HEAD);
    }
}
