package dev.ledgerwing.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.mass.GrowthHistory;
import dev.ledgerwing.core.mass.RevisionMass;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.MassUnit;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.data.xy.XYSeriesCollection;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class GrowthCurvesTest {

    private static final LocalDate START = LocalDate.of(2026, 4, 1);

    @Test
    void startsTheTargetOnTheDayItWasSet() {
        XYSeriesCollection target = curves(null, 1200.0, 1200.0).target();

        assertThat(target.getXValue(0, 0)).isEqualTo(GrowthCurves.x(START.plusDays(10)));
        assertThat(target.getYValue(0, 0)).isEqualTo(1200);
    }

    @Test
    void leavesAGapWhereTheTargetWasTakenAway() {
        XYSeriesCollection target = curves(1200.0, null, 1300.0).target();

        assertThat(target.getYValue(0, 0)).isEqualTo(1200);
        assertThat(target.getYValue(0, 1)).isNaN();
        assertThat(target.getYValue(0, 2)).isEqualTo(1300);
    }

    @Test
    void holdsTheLastTargetToTheEndOfTheTrend() {
        GrowthCurves curves = curves(1200.0, 1200.0, 1200.0, 1200.0, 1300.0);
        XYSeriesCollection target = curves.target();

        assertThat(target.getItemCount(0)).isEqualTo(3);
        assertThat(target.getXValue(0, 2)).isEqualTo(GrowthCurves.x(curves.end()));
        assertThat(target.getYValue(0, 2)).isEqualTo(1300);
    }

    @Test
    void hasNoTargetToDrawWhereNoneWasEverSet() {
        assertThat(curves(null, null).target().getItemCount(0)).isZero();
    }

    @Test
    void carriesTheTrendOnByAQuarterOfTheTimeSeen() {
        GrowthCurves curves = curves(1200.0, 1200.0, 1200.0, 1200.0, 1200.0);
        XYSeriesCollection trend = curves.trend();

        assertThat(curves.end()).isEqualTo(START.plusDays(40 + 10));
        assertThat(trend.getXValue(0, 0)).isEqualTo(GrowthCurves.x(START.plusDays(40)));
        assertThat(trend.getYValue(0, 0)).isEqualTo(1040);
        assertThat(trend.getYValue(0, 1)).isEqualTo(1050); // 1 g a day
    }

    @Test
    void drawsNoTrendThroughTooFewDays() {
        GrowthCurves curves = curves(1200.0, 1200.0);

        assertThat(curves.trend().getItemCount(0)).isZero();
        assertThat(curves.end()).isEqualTo(START.plusDays(10));
    }

    @Test
    void countsInOuncesForWhomReadsThose() {
        GrowthCurves curves = new GrowthCurves(curves(1200.0).history(), MassUnit.OZ);

        assertThat(curves.predicted().getYValue(0, 0)).isEqualTo(1000 / 28.349523125);
    }

    /** A revision every ten days, each 10 g heavier. */
    private static GrowthCurves curves(@Nullable Double... targetsG) {
        List<RevisionMass> revisions = IntStream.range(0, targetsG.length)
                .mapToObj(index -> revision(index, targetsG[index]))
                .toList();
        return new GrowthCurves(GrowthHistory.of(revisions), MassUnit.G);
    }

    private static RevisionMass revision(int index, @Nullable Double targetG) {
        Mass predicted = Mass.ofGrams(1000 + 10 * index);
        return new RevisionMass(
                index + 1,
                START.plusDays(10L * index).atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC),
                targetG == null ? null : Mass.ofGrams(targetG),
                Mass.ofGrams(900),
                predicted);
    }
}
