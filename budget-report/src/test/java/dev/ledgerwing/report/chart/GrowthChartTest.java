package dev.ledgerwing.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.ledgerwing.core.mass.GrowthHistory;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.mass.RevisionMass;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.seed.SeedAirframe;
import dev.ledgerwing.seed.SeedFleet;
import dev.ledgerwing.seed.SeedRevision;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GrowthChartTest {

    private static final Pattern LEVEL_TARGET = Pattern.compile(
            "<line class=\"target\"[^>]* x1=\"([\\d.]+)\" x2=\"(?!\\1\")[\\d.]+\" y1=\"([\\d.]+)\" y2=\"\\2\"");

    @Test
    void carriesNothingThatAStrictContentPolicyBlocksAndNoId() {
        assertThat(curlew())
                .startsWith("<svg ")
                .endsWith("</svg>")
                .doesNotContain("style=", "<style", " id=", "url(", "rgb(", "#", "href", "<script");
    }

    @Test
    void isTheSameForEqualHistories() {
        assertThat(curlew()).isEqualTo(curlew());
    }

    @Test
    void namesItselfForThoseWhoDoNotSeeIt() {
        assertThat(curlew())
                .contains("role=\"img\"")
                .contains("<title>Mass from 11 Apr 2026 to 24 Nov 2026: predicted ")
                .contains("; target 6800\u2009g</title>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"predicted", "basic", "target", "trend"})
    void drawsEachCurveUnderAClassOfItsOwn(String curve) {
        assertThat(curlew()).contains("<g class=\"" + curve + "\" fill=\"none\" stroke=\"currentColor\"");
    }

    @Test
    void tellsCurvesApartWithoutColour() {
        assertThat(curlew()).contains("stroke-dasharray=\"8.0,4.0\"", "stroke-dasharray=\"2.0,4.0\"");
    }

    @Test
    void labelsTheAxesWithDatesAndWithTheUnit() {
        assertThat(curlew()).contains(">Jun 2026</text>", ">6500\u202Fg</text>");
        assertThat(GrowthChart.svg(history(SeedFleet.airframes().get(0)), new Figures(UnitSystem.OUNCE_INCH)))
                .contains("\u202Foz</text>");
    }

    @Test
    void drawsTheFirstRevisionAloneAndLeavesOutWhatIsNotThere() {
        RevisionMass first =
                new RevisionMass(1, Instant.parse("2026-04-11T16:20:00Z"), null, Mass.ofGrams(900), Mass.ofGrams(1000));

        String svg = GrowthChart.svg(GrowthHistory.of(List.of(first)), Figures.METRIC);

        assertThat(svg)
                .contains("class=\"predicted\"", "no target is set", "2026</text>")
                .doesNotContain("class=\"trend\"", ">trend</text>", ">target of the time</text>");
    }

    @Test
    void drawsNothingForTheTimeWithoutATarget() {
        String svg = GrowthChart.svg(
                GrowthHistory.of(List.of(
                        revision(1, 1200.0),
                        revision(2, null),
                        revision(3, null),
                        revision(4, 1300.0),
                        revision(5, 1300.0))),
                Figures.METRIC);

        assertThat(svg).doesNotContain("NaN");
        assertThat(LEVEL_TARGET.matcher(svg).results()).hasSize(2);
    }

    private static RevisionMass revision(int number, @Nullable Double targetG) {
        return new RevisionMass(
                number,
                Instant.parse("2026-04-11T16:20:00Z").plus(10L * number, ChronoUnit.DAYS),
                targetG == null ? null : Mass.ofGrams(targetG),
                Mass.ofGrams(900),
                Mass.ofGrams(1000 + 10 * number));
    }

    @Test
    void refusesAHistoryWithoutARevision() {
        assertThatThrownBy(() -> GrowthChart.svg(GrowthHistory.of(List.of()), Figures.METRIC))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a growth chart needs one revision at least");
    }

    private static String curlew() {
        return GrowthChart.svg(history(SeedFleet.airframes().get(0)), Figures.METRIC);
    }

    private static GrowthHistory history(SeedAirframe airframe) {
        return GrowthHistory.of(
                airframe.revisions().stream().map(GrowthChartTest::mass).toList());
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
