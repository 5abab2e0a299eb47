package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Where the supports stand, seen from above. Scales tell where the centre of mass lies along a line of supports, and in both directions
 * only when the supports span an area.
 *
 * @param points corners and inner points, as given
 */
record SupportPlan(List<Point> points) {

    /** Points nearer than this are one; a line is straight to this. Ledgerwing's own choice. */
    static final double TOLERANCE_MM = 1;

    record Point(double xMm, double yMm) {

        double distanceMm(Point other) {
            return Math.hypot(xMm - other.xMm, yMm - other.yMm);
        }
    }

    SupportPlan {
        points = List.copyOf(points);
    }

    boolean tellsX() {
        return points.size() > 1 && (!isLine() || spread(Axis.Y) <= TOLERANCE_MM);
    }

    boolean tellsY() {
        return points.size() > 1 && (!isLine() || spread(Axis.X) <= TOLERANCE_MM);
    }

    boolean isLine() {
        List<Point> hull = hull();
        return hull.size() < 3 || points.stream().allMatch(point -> offLongest(hull, point) <= TOLERANCE_MM);
    }

    /** Whether a point lies no further than {@code slackMm} outside the supports, in the directions they can tell. */
    boolean carries(Point centre, double slackMm) {
        if (isLine()) {
            return (!tellsX() || isBetween(Axis.X, centre.xMm, slackMm))
                    && (!tellsY() || isBetween(Axis.Y, centre.yMm, slackMm));
        }
        List<Point> hull = hull();
        for (int i = 0; i < hull.size(); i++) {
            if (left(hull.get(i), hull.get((i + 1) % hull.size()), centre) < -slackMm) {
                return false;
            }
        }
        return true;
    }

    private boolean isBetween(Axis axis, double mm, double slackMm) {
        double least =
                points.stream().mapToDouble(each -> along(axis, each)).min().orElse(mm);
        return mm >= least - slackMm && mm <= least + spread(axis) + slackMm;
    }

    private double spread(Axis axis) {
        double most =
                points.stream().mapToDouble(each -> along(axis, each)).max().orElse(0);
        return most
                - points.stream().mapToDouble(each -> along(axis, each)).min().orElse(0);
    }

    private static double along(Axis axis, Point point) {
        return axis == Axis.X ? point.xMm : point.yMm;
    }

    /** Distance of a point from the line through the two corners that lie furthest apart. */
    private static double offLongest(List<Point> hull, Point point) {
        Point from = hull.get(0);
        Point to = hull.get(1);
        for (Point one : hull) {
            for (Point other : hull) {
                if (one.distanceMm(other) > from.distanceMm(to)) {
                    from = one;
                    to = other;
                }
            }
        }
        return Math.abs(left(from, to, point));
    }

    /** How far a point lies to the left of the way from one point to another, in millimetres. */
    private static double left(Point from, Point to, Point point) {
        return cross(from, to, point) / from.distanceMm(to);
    }

    private static double cross(Point from, Point to, Point point) {
        return (to.xMm - from.xMm) * (point.yMm - from.yMm) - (to.yMm - from.yMm) * (point.xMm - from.xMm);
    }

    /** The corners, counter-clockwise (monotone chain). */
    private List<Point> hull() {
        List<Point> sorted = points.stream()
                .distinct()
                .sorted(Comparator.comparingDouble(Point::xMm).thenComparingDouble(Point::yMm))
                .toList();
        if (sorted.size() < 3) {
            return sorted;
        }
        List<Point> hull = chain(sorted);
        List<Point> back = new ArrayList<>(sorted);
        Collections.reverse(back);
        hull.addAll(chain(back));
        return hull;
    }

    /** One side without its last corner, with which the other begins. */
    private static List<Point> chain(List<Point> sorted) {
        List<Point> chain = new ArrayList<>();
        for (Point point : sorted) {
            while (chain.size() > 1 && cross(chain.get(chain.size() - 2), chain.get(chain.size() - 1), point) <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(point);
        }
        chain.remove(chain.size() - 1);
        return chain;
    }
}
