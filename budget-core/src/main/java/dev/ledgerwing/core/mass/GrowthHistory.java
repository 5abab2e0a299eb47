package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.quantity.Mass;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How the mass has grown: one point a day (UTC), the last revision of that day, against the target of the time.
 *
 * @param points by date, earliest first
 * @param trend how fast the predicted mass grows; null with fewer than {@value #DAYS_FOR_A_TREND} days
 */
public record GrowthHistory(List<Point> points, @Nullable GrowthTrend trend) {

    public static final int DAYS_FOR_A_TREND = 5;

    /** What the airframe weighed at the end of a day; target null = none was set. */
    public record Point(
            LocalDate day, int revision, @Nullable Mass target, Mass basic, Mass predicted) {}

    public GrowthHistory {
        points = List.copyOf(points);
    }

    /** The history of these revisions, given in any order. */
    public static GrowthHistory of(List<RevisionMass> revisions) {
        Map<LocalDate, Point> lastOfDay = new TreeMap<>();
        revisions.stream()
                .sorted(Comparator.comparingInt(RevisionMass::number))
                .map(GrowthHistory::point)
                .forEach(point -> lastOfDay.put(point.day(), point));
        List<Point> points = List.copyOf(lastOfDay.values());
        return new GrowthHistory(points, points.size() < DAYS_FOR_A_TREND ? null : GrowthTrend.through(points));
    }

    private static Point point(RevisionMass revision) {
        LocalDate day = LocalDate.ofInstant(revision.moment(), ZoneOffset.UTC);
        return new Point(day, revision.number(), revision.target(), revision.basic(), revision.predicted());
    }
}
