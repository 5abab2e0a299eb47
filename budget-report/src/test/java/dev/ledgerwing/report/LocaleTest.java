package dev.ledgerwing.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.mass.GrowthHistory;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.mass.RevisionMass;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.channels.ChannelReport;
import dev.ledgerwing.report.channels.ChannelsText;
import dev.ledgerwing.report.chart.GrowthChart;
import dev.ledgerwing.report.review.ReviewJson;
import dev.ledgerwing.report.review.ReviewText;
import dev.ledgerwing.report.sheet.BalanceSheet;
import dev.ledgerwing.report.sheet.BuildSheet;
import dev.ledgerwing.report.sheet.OutputSheet;
import dev.ledgerwing.report.sheet.PageStyles;
import dev.ledgerwing.report.sheet.RadioSheet;
import dev.ledgerwing.report.sheet.SheetHead;
import dev.ledgerwing.report.sheet.SheetRenderer;
import dev.ledgerwing.seed.SeedFleet;
import dev.ledgerwing.seed.SeedRevision;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LocaleTest {

    private static final Locale LOCALE = Locale.getDefault();
    private static final TimeZone ZONE = TimeZone.getDefault();

    @AfterEach
    void putBack() {
        Locale.setDefault(LOCALE);
        TimeZone.setDefault(ZONE);
    }

    @ParameterizedTest
    @CsvSource({"de-DE, Europe/Berlin", "tr-TR, Asia/Tokyo", "ar-EG, America/Los_Angeles"})
    void writesTheSameOnEveryMachine(String language, String zone) {
        set("en-GB", "UTC");
        List<String> english = written();

        set(language, zone);

        assertThat(written()).isEqualTo(english);
    }

    @Test
    void writesMonthsInEnglish() {
        set("de-DE", "Europe/Berlin");

        assertThat(written().get(0)).contains("1 Dec 2026");
    }

    private static void set(String language, String zone) {
        Locale.setDefault(Locale.forLanguageTag(language));
        TimeZone.setDefault(TimeZone.getTimeZone(zone));
    }

    private static List<String> written() {
        BuildReview review = BuildReview.of(SeedFleet.airframes().get(0).last().build());
        BuildSheet sheet = BuildSheet.of(
                review, new SheetHead("12", LocalDate.of(2026, 12, 1), "İnes", "0123456789abcdef".repeat(4), null));
        BalanceSheet balance = BalanceSheet.of(review, SheetHead.draft("0123456789abcdef".repeat(4)));
        SheetRenderer renderer = new SheetRenderer();
        return List.of(
                renderer.html(sheet, PageStyles.inFolder("paper/")),
                Arrays.toString(renderer.pdf(sheet)),
                renderer.html(balance, PageStyles.inFolder("paper/")),
                Arrays.toString(renderer.pdf(balance)),
                renderer.html(RadioSheet.of(review, SheetHead.draft("ab".repeat(32))), PageStyles.inFolder("paper/")),
                renderer.html(OutputSheet.of(review, SheetHead.draft("ab".repeat(32))), PageStyles.inFolder("paper/")),
                ChannelsText.of(ChannelReport.of(review)),
                ReviewText.of(review),
                ReviewJson.of(review),
                GrowthChart.svg(history(), Figures.METRIC));
    }

    private static GrowthHistory history() {
        return GrowthHistory.of(SeedFleet.airframes().get(0).revisions().stream()
                .map(LocaleTest::mass)
                .toList());
    }

    private static RevisionMass mass(SeedRevision revision) {
        MassStatement statement = MassStatement.of(revision.build());
        return new RevisionMass(
                revision.number(),
                revision.moment(),
                revision.build().budget().targetMass(),
                statement.basic(),
                statement.predicted());
    }
}
