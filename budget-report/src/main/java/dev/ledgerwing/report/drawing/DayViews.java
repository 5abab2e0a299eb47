package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.core.power.solar.DayBalance;
import dev.ledgerwing.core.power.solar.DayCharge;
import dev.ledgerwing.core.power.solar.DaySun;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.DayView.Moment;
import dev.ledgerwing.report.drawing.DayView.SunEvent;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Makes a {@link DayView} of the balance of a day. */
final class DayViews {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final int HOURS = 24;

    private final DayBalance balance;

    DayViews(DayBalance balance) {
        this.balance = balance;
    }

    DayView view(String airframe) {
        SolarDay day = balance.day();
        DayCharge charge = balance.charge();
        return new DayView(
                airframe,
                DAY.format(day.date()) + (day.place() == null ? "" : ", " + day.place()),
                balance.points().stream()
                        .map(point ->
                                new Moment(point.hour(), point.harvestW(), point.consumptionW(), point.chargePercent()))
                        .toList(),
                suns(),
                charge == null ? null : (Double) charge.keepPercent(),
                notes());
    }

    private List<SunEvent> suns() {
        DaySun sun = balance.sun();
        return Stream.of(event(sun.riseHour(), "sunrise"), event(sun.setHour(), "sunset"))
                .flatMap(List::stream)
                .toList();
    }

    /** On the date of the day; drawn where it falls into the 24 hours, which may begin later than midnight. */
    private List<SunEvent> event(@Nullable Double hour, String word) {
        if (hour == null) {
            return List.of();
        }
        double drawn = hour < balance.day().startHour() ? hour + HOURS : hour;
        return List.of(new SunEvent(drawn, word + " " + clock(hour)));
    }

    /** {@code 05:07}, {@code 05:07 on the next day}. */
    static String clock(double hour) {
        long minutes = Math.round(hour * 60);
        long ofHour = minutes % 60;
        long hours = minutes / 60 % HOURS;
        return (hours < 10 ? "0" : "") + hours + ":" + (ofHour < 10 ? "0" : "") + ofHour
                + (minutes >= HOURS * 60 ? " on the next day" : "");
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        switch (balance.sun().kind()) {
            case POLAR_DAY -> notes.add("The sun does not set on this day.");
            case POLAR_NIGHT -> notes.add("The sun does not rise on this day.");
            case DAY_AND_NIGHT -> {}
        }
        notes.add("Harvest " + wattHours(balance.harvestWh()) + ", consumption " + wattHours(balance.consumptionWh())
                + " in 24\u2009h.");
        DayCharge charge = balance.charge();
        if (charge != null) {
            notes.add("Lowest charge " + Figures.percent(charge.lowestPercent()) + " at " + clock(charge.lowestHour())
                    + ".");
        }
        if (!balance.missing().isEmpty()) {
            notes.add("To be known first: " + String.join("; ", balance.missing()) + ".");
        }
        return notes;
    }

    private static String wattHours(@Nullable Double energyWh) {
        return energyWh == null ? "not known" : Figures.number(energyWh, 1) + "\u2009Wh";
    }
}
