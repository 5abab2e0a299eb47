package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.mass.GrowthHistory;
import dev.ledgerwing.core.mass.GrowthHistory.Point;
import dev.ledgerwing.core.mass.GrowthTrend;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.MassUnit;
import dev.ledgerwing.web.support.Moments;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the mass has grown against the target of the time.
 *
 * @param chart the same drawn, an SVG element to stand in the page; null while there is but one day
 * @param sentences the trend, and where it leads
 * @param points one a day, earliest first
 */
record GrowthView(@Nullable String chart, List<String> sentences, List<Row> points) {

    private static final int DAYS_OF_A_WEEK = 7;

    /** The end of one day on which something changed. */
    record Row(String day, int revision, String target, String basic, String predicted, String margin) {}

    static GrowthView of(GrowthHistory history, @Nullable String chart, Figures figures) {
        return new GrowthView(
                chart,
                sentences(history, figures),
                history.points().stream().map(point -> row(point, figures)).toList());
    }

    private static Row row(Point point, Figures figures) {
        Mass target = point.target();
        return new Row(
                Moments.day(point.day()),
                point.revision(),
                target == null ? "none set" : figures.mass(target),
                figures.mass(point.basic()),
                figures.mass(point.predicted()),
                target == null ? "–" : figures.signedMass(target.minus(point.predicted())));
    }

    private static List<String> sentences(GrowthHistory history, Figures figures) {
        GrowthTrend trend = history.trend();
        if (trend == null) {
            int days = history.points().size();
            return List.of("A trend needs " + GrowthHistory.DAYS_FOR_A_TREND + " days with changes; so far there "
                    + (days == 1 ? "is 1." : "are " + days + "."));
        }
        LocalDate first = history.points().get(0).day();
        return List.of(slope(trend, first, figures), outlook(trend, figures));
    }

    private static String slope(GrowthTrend trend, LocalDate first, Figures figures) {
        Mass aWeek = rounded(trend.gramsPerDay() * DAYS_OF_A_WEEK, figures);
        if (aWeek.mg() == 0) {
            return "Since " + Moments.day(first) + " the predicted mass has kept steady.";
        }
        Mass size = aWeek.isNegative() ? Mass.ZERO.minus(aWeek) : aWeek;
        return "Since " + Moments.day(first) + " the predicted mass has " + (aWeek.isNegative() ? "fallen" : "grown")
                + " by about " + figures.mass(size) + " a week.";
    }

    /** To two digits of the unit it is read in: more would pretend to know. */
    private static Mass rounded(double grams, Figures figures) {
        MassUnit unit = figures.units().massUnit();
        double digits =
                new BigDecimal(grams / unit.inGrams()).round(new MathContext(2)).doubleValue();
        return Mass.ofGrams(digits * unit.inGrams());
    }

    private static String outlook(GrowthTrend trend, Figures figures) {
        Mass target = trend.from().target();
        if (target == null) {
            return "No target is set that it could cross.";
        }
        if (trend.from().predicted().compareTo(target) > 0) {
            return "It is above the target already.";
        }
        if (trend.gramsPerDay() <= 0) {
            return "It is not growing towards the target.";
        }
        return crossing(trend.crossing(), trend, figures.mass(target));
    }

    private static String crossing(@Nullable LocalDate crossing, GrowthTrend trend, String target) {
        return crossing == null
                ? "At this rate it would take more than ten years to reach the target of " + target + "."
                : "If it went on like this from " + Moments.day(trend.from().day()) + ", it would cross the target of "
                        + target + " on " + Moments.day(crossing) + ".";
    }
}
