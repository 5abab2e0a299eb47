package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.mass.GrowthHistory.Point;
import dev.ledgerwing.core.quantity.Mass;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How fast the predicted mass grows, and where that leads.
 *
 * @param gramsPerDay slope of the least-squares line through predicted mass over date, in grams a day
 * @param from the last point, which the trend is carried on from
 */
public record GrowthTrend(double gramsPerDay, Point from) {

    /** Beyond ten years a trend says nothing. */
    private static final double LONGEST_DAYS = 3652;

    /** Slope = sum((t - mean t)(m - mean m)) / sum((t - mean t)^2), t in days, m in grams; two days at least. */
    static GrowthTrend through(List<Point> points) {
        Point first = points.get(0);
        double meanDay = points.stream()
                .mapToDouble(point -> days(first, point))
                .average()
                .orElseThrow();
        double meanG = points.stream()
                .mapToDouble(point -> grown(first, point))
                .average()
                .orElseThrow();
        double product = 0;
        double square = 0;
        for (Point point : points) {
            double day = days(first, point) - meanDay;
            product += day * (grown(first, point) - meanG);
            square += day * day;
        }
        return new GrowthTrend(product / square, points.get(points.size() - 1));
    }

    private static double days(Point first, Point point) {
        return point.day().toEpochDay() - first.day().toEpochDay();
    }

    private static double grown(Point first, Point point) {
        return point.predicted().minus(first.predicted()).grams();
    }

    /** The predicted mass on a later day if it goes on like this from the last point. */
    public Mass predictedOn(LocalDate day) {
        double daysOn = day.toEpochDay() - from.day().toEpochDay();
        return from.predicted().plus(Mass.ofGrams(gramsPerDay * daysOn));
    }

    /**
     * The first day on which the mass would be above the last target. Null where none is set, the mass does not grow, the
     * target is broken already, or it would take more than ten years.
     */
    public @Nullable LocalDate crossing() {
        Mass target = from.target();
        if (target == null || gramsPerDay <= 0 || from.predicted().compareTo(target) > 0) {
            return null;
        }
        double daysLeft = Math.floor(target.minus(from.predicted()).grams() / gramsPerDay) + 1;
        return daysLeft > LONGEST_DAYS ? null : from.day().plusDays((long) daysLeft);
    }
}
