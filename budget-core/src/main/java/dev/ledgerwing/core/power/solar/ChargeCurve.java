package dev.ledgerwing.core.power.solar;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The filling and emptying of the packs.
 *
 * @param course its moments
 * @param surplusW harvest less consumption at each of them; between two a straight line
 */
record ChargeCurve(DayCourse course, List<Double> surplusW) {

    /** Nothing is lost in charging: the record has no figure for it. */
    DayCharge charge(double capacityWh, double keepPercent) {
        List<Double> percent = percent(capacityWh);
        double lowest = Collections.min(percent);
        Double emptyHour = lowest > 0 ? null : (Double) emptyHour(percent, capacityWh);
        return new DayCharge(
                percent,
                lowest,
                emptyHour == null ? course.hour(percent.indexOf(lowest)) : emptyHour,
                percent.get(percent.size() - 1),
                keepPercent,
                firstBelow(percent, keepPercent),
                emptyHour);
    }

    private List<Double> percent(double capacityWh) {
        List<Double> percent = new ArrayList<>(List.of(course.day().startPercent()));
        for (int i = 1; i < surplusW.size(); i++) {
            double before = percent.get(i - 1);
            double after = before + gainPercent(i, capacityWh);
            percent.add(before <= 0 ? 0 : Math.max(0, Math.min(100, after)));
        }
        return percent;
    }

    private double gainPercent(int i, double capacityWh) {
        return 100 * (surplusW.get(i - 1) + surplusW.get(i)) / 2 * course.stepH() / capacityWh;
    }

    private double emptyHour(List<Double> percent, double capacityWh) {
        int i = percent.indexOf(0.0);
        return i == 0
                ? course.hour(0)
                : course.hour(i - 1) - course.stepH() * percent.get(i - 1) / gainPercent(i, capacityWh);
    }

    private @Nullable Double firstBelow(List<Double> percent, double level) {
        for (int i = 0; i < percent.size(); i++) {
            if (percent.get(i) < level) {
                return i == 0 ? course.hour(0) : crossing(percent, i, level);
            }
        }
        return null;
    }

    private double crossing(List<Double> percent, int i, double level) {
        double before = percent.get(i - 1);
        return course.hour(i - 1) + course.stepH() * (before - level) / (before - percent.get(i));
    }
}
