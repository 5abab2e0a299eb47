package dev.ledgerwing.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.report.Builds;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class BuildSheetTest {

    private static final SheetHead HEAD = new SheetHead(
            "12",
            LocalDate.of(2026, 11, 24),
            "Mara",
            "0123456789abcdef".repeat(4),
            "http://127.0.0.1:8080/airframes/skiff");

    @Test
    void saysThatAMassIsNotKnownAndGuessesNothingAboutIt() {
        PartEntry loom = part(sheet(Builds.skiff()), "Wiring loom");

        assertThat(loom.known()).isFalse();
        assertThat(List.of(loom.each(), loom.total(), loom.x())).containsOnly("not known");
        assertThat(loom.basis()).isEmpty();
    }

    @Test
    void callsEverySumAtLeastAndTheMarginAtMostWhileAMassIsMissing() {
        BuildSheet sheet = sheet(Builds.skiff());

        assertThat(sheet.mass()).isEqualTo(new VerdictMark("unknown", "not known"));
        assertThat(sheet.groups().get(0).total()).isEqualTo("at least 485.5");
        assertThat(total(sheet, "Predicted mass").value()).startsWith("at least ");
        assertThat(fact(sheet, "Predicted mass").value()).startsWith("at least ");
        assertThat(fact(sheet, "Margin").value()).startsWith("at most ");
        assertThat(fact(sheet, "Ceiling").note()).startsWith("heaviest in flight at least ");
        assertThat(fact(sheet, "Forecast, 95 of 100").value()).isEqualTo("not known");
    }

    @Test
    void saysOnlyFiguresWhenEveryMassIsKnown() {
        BuildSheet sheet = sheet(Builds.complete());

        assertThat(sheet.facts()).noneMatch(fact -> fact.value().startsWith("at "));
        assertThat(sheet.totals()).noneMatch(total -> total.value().startsWith("at "));
        assertThat(sheet.groups()).noneMatch(group -> group.total().startsWith("at "));
    }

    @Test
    void givesSubtotalsThatMakeUpTheBasicMass() {
        BuildSheet sheet = sheet(Builds.complete());

        assertThat(sheet.groups()).extracting(PartGroup::total).containsExactly("505.5", "182.7", "300");
        assertThat(total(sheet, "Basic mass").value()).isEqualTo("988.2");
    }

    @Test
    void namesWhatTheMarginIsAPercentOf() {
        assertThat(fact(sheet(Builds.complete()), "Margin").note()).endsWith("\u2009% of target");
    }

    @Test
    void showsWhatTheScalesSaidAndNoLineExplains() {
        assertThat(total(sheet(Builds.complete()), "Booked from the scales").value())
                .isEqualTo("−7.5");
    }

    @Test
    void saysByHowMuchTheTargetIsBroken() {
        BuildSheet sheet = sheet(Builds.withTarget(Builds.complete(), 900));

        assertThat(sheet.mass().kind()).isEqualTo("breaks");
        assertThat(sheet.mass().words()).startsWith("breaks by ");
    }

    @Test
    void holdsNothingAgainstATargetThatIsNotSet() {
        BuildSheet sheet = sheet(Builds.withoutTarget(Builds.complete()));

        assertThat(sheet.mass().words()).isEqualTo("not known");
        assertThat(fact(sheet, "Target").value()).isEqualTo("not set");
        assertThat(fact(sheet, "Margin").value()).isEqualTo("not known");
        assertThat(fact(sheet, "Reserve wanted").value()).isEqualTo("not known");
        assertThat(fact(sheet, "Ceiling").value()).isEqualTo("not set");
        assertThat(sheet.bar().target()).isNull();
    }

    @Test
    void neverCallsAForecastCertain() {
        assertThat(fact(sheet(Builds.withTarget(Builds.complete(), 100)), "Forecast, 95 of 100")
                        .note())
                .isEqualTo("within the target: below 0.1\u2009%");
        assertThat(fact(sheet(Builds.withTarget(Builds.complete(), 100_000)), "Forecast, 95 of 100")
                        .note())
                .isEqualTo("within the target: above 99.9\u2009%");
    }

    @Test
    void keepsPartsThatStayAtHomeApart() {
        BuildSheet sheet = sheet(Builds.skiff());

        assertThat(sheet.notAboard().parts()).extracting(PartEntry::name).containsExactly("Bench stand");
        assertThat(sheet.notAboard().total()).isEmpty();
        assertThat(sheet.groups().stream().flatMap(group -> group.parts().stream()))
                .extracting(PartEntry::name)
                .doesNotContain("Bench stand");
    }

    @Test
    void listsWhatTheDesignLoadCaseCarries() {
        PartEntry bottles = part(sheet(Builds.skiff()), "Sample bottles");

        assertThat(bottles.total()).isEqualTo("300");
        assertThat(bottles.x()).isEqualTo("not known");
    }

    @Test
    void printsInOuncesAndInchesForWhomReadsThose() {
        BuildReview review = BuildReview.of(Builds.complete(), new Figures(UnitSystem.OUNCE_INCH));
        BuildSheet sheet = BuildSheet.of(review, HEAD);

        assertThat(sheet.massUnit()).isEqualTo("oz");
        assertThat(sheet.lengthUnit()).isEqualTo("in");
        assertThat(part(sheet, "Hull shell, glass on foam").each()).isEqualTo("14.55");
        assertThat(part(sheet, "Hull shell, glass on foam").x()).isEqualTo("12.2");
    }

    @Test
    void saysWhichRecordItWasPrintedFrom() {
        SheetTitle title = sheet(Builds.skiff()).title();

        assertThat(title.revision()).isEqualTo("12");
        assertThat(title.date()).isEqualTo("24 Nov 2026");
        assertThat(title.author()).isEqualTo("Mara");
        assertThat(title.fingerprint()).isEqualTo("0123 4567 89ab");
        assertThat(title.qrCaption()).isEqualTo("this airframe’s page");
    }

    @Test
    void saysWhatAFileAloneDoesNotTell() {
        SheetTitle title = BuildSheet.of(BuildReview.of(Builds.skiff()), SheetHead.draft("0123456789abcdef".repeat(4)))
                .title();

        assertThat(title.revision()).isEqualTo("draft");
        assertThat(List.of(title.date(), title.author())).containsOnly("not given");
        assertThat(title.qrCaption()).isEqualTo("SHA-256 of the record");
    }

    private static BuildSheet sheet(Build build) {
        return BuildSheet.of(BuildReview.of(build), HEAD);
    }

    private static PartEntry part(BuildSheet sheet, String name) {
        return sheet.groups().stream()
                .flatMap(group -> group.parts().stream())
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Fact fact(BuildSheet sheet, String label) {
        return sheet.facts().stream()
                .filter(fact -> fact.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static Fact total(BuildSheet sheet, String label) {
        return sheet.totals().stream()
                .filter(fact -> fact.label().equals(label))
                .findFirst()
                .orElseThrow();
    }
}
