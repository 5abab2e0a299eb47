package dev.ledgerwing.report.chart;

import dev.ledgerwing.core.mass.GrowthHistory;
import dev.ledgerwing.core.mass.GrowthHistory.Point;
import dev.ledgerwing.core.mass.GrowthTrend;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.MassUnit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jspecify.annotations.Nullable;

/** The curves of a growth history as the chart library takes them: days along x in milliseconds, masses in {@code unit}. */
record GrowthCurves(GrowthHistory history, MassUnit unit) {

    private static final double MS_PER_DAY = 86_400_000;
    /** The trend is carried on by this share of the time it was seen over: beyond that it says little. */
    private static final double LOOK_AHEAD = 0.25;

    XYSeriesCollection basic() {
        return new XYSeriesCollection(series("basic mass", Point::basic));
    }

    XYSeriesCollection predicted() {
        return new XYSeriesCollection(series("predicted mass", Point::predicted));
    }

    /**
     * The targets of the time, with an item for each change: held until the next one, the last to the end of the chart; NaN where none
     * was set.
     */
    XYSeriesCollection target() {
        XYSeries target = new XYSeries("target of the time");
        Mass before = null;
        for (Point point : history.points()) {
            if (!Objects.equals(point.target(), before)) {
                target.add(x(point.day()), yOrGap(point.target()));
                before = point.target();
            }
        }
        if (before != null) {
            target.addOrUpdate(x(end()), y(before));
        }
        return new XYSeriesCollection(target);
    }

    /** The trend from the last point on; without items where there is none. */
    XYSeriesCollection trend() {
        XYSeries series = new XYSeries("trend");
        GrowthTrend trend = history.trend();
        if (trend != null) {
            series.add(x(last().day()), y(last().predicted()));
            series.add(x(end()), y(trend.predictedOn(end())));
        }
        return new XYSeriesCollection(series);
    }

    /** The last day shown. */
    LocalDate end() {
        if (history.trend() == null) {
            return last().day();
        }
        long seen = ChronoUnit.DAYS.between(first().day(), last().day());
        return last().day().plusDays(Math.max(1, Math.round(seen * LOOK_AHEAD)));
    }

    Point first() {
        return history.points().get(0);
    }

    Point last() {
        List<Point> points = history.points();
        return points.get(points.size() - 1);
    }

    private XYSeries series(String name, Function<Point, Mass> mass) {
        XYSeries series = new XYSeries(name);
        for (Point point : history.points()) {
            series.add(x(point.day()), y(mass.apply(point)));
        }
        return series;
    }

    static double x(LocalDate day) {
        return day.toEpochDay() * MS_PER_DAY;
    }

    private double yOrGap(@Nullable Mass mass) {
        return mass == null ? Double.NaN : y(mass);
    }

    private double y(Mass mass) {
        return mass.grams() / unit.inGrams();
    }
}
