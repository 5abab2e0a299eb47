package dev.ledgerwing.core.power.solar;

import dev.ledgerwing.core.build.SolarDay;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.IntStream;

/** The moments of 24 hours from the day's start, in equal steps, both ends included. */
record DayCourse(SolarDay day, int stepMinutes) {

    private static final int DAY_MINUTES = 24 * 60;

    ZoneOffset offset() {
        return ZoneOffset.ofTotalSeconds((int) Math.round(day.utcOffsetHours() * 3600));
    }

    int size() {
        return DAY_MINUTES / stepMinutes + 1;
    }

    double stepH() {
        return stepMinutes / 60.0;
    }

    /** Hours since midnight of the day's date. */
    double hour(int i) {
        return day.startHour() + i * stepH();
    }

    private ZonedDateTime moment(int i) {
        return day.date().atStartOfDay(offset()).plusSeconds(Math.round(hour(i) * 3600));
    }

    List<SunPosition> positions() {
        Standpoint from = Standpoint.of(day);
        return IntStream.range(0, size())
                .mapToObj(i -> SunPosition.at(moment(i), from))
                .toList();
    }

    /** Watts at every moment. */
    List<Double> watts(DayHarvest harvest, List<SunPosition> positions) {
        return IntStream.range(0, size())
                .mapToDouble(i -> harvest.watts(positions.get(i), moment(i).getDayOfYear()))
                .boxed()
                .toList();
    }

    /** Between two moments a straight line. */
    double energyWh(List<Double> watts) {
        double ends = (watts.get(0) + watts.get(watts.size() - 1)) / 2;
        return stepH() * (watts.stream().mapToDouble(Double::doubleValue).sum() - ends);
    }
}
