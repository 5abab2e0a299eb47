package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.SolarDay;
import dev.ledgerwing.core.power.solar.ClockHour;
import dev.ledgerwing.core.power.solar.DayBalance;
import dev.ledgerwing.core.power.solar.DayCharge;
import dev.ledgerwing.core.power.solar.DayFindings;
import dev.ledgerwing.core.power.solar.DaySun;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.web.support.Moments;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The day in the sun: harvest against what is drawn.
 *
 * @param title place and date
 * @param finding whether the night can be flown through
 */
record DayView(String title, @Nullable Finding finding, List<Fact> facts) {

    /** A figure with its name. */
    record Fact(String name, String figure) {}

    static DayView of(DayBalance balance, BuildReview review) {
        SolarDay day = balance.day();
        String place = day.place();
        return new DayView(
                (place == null || place.isBlank() ? "" : place + ", ") + Moments.day(day.date()),
                review.finding(DayFindings.DAY).orElse(null),
                facts(balance));
    }

    private static List<Fact> facts(DayBalance balance) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("sun", sun(balance.sun())));
        facts.add(new Fact("harvest in 24 h", Electric.wattHours(balance.harvestWh())));
        facts.add(new Fact("drawn in 24 h", Electric.wattHours(balance.consumptionWh())));
        DayCharge charge = balance.charge();
        facts.add(new Fact(
                "lowest charge",
                charge == null
                        ? Electric.NOT_KNOWN
                        : Figures.percent(charge.lowestPercent()) + " at " + ClockHour.text(charge.lowestHour())));
        if (charge != null) {
            facts.add(new Fact("must stay in the packs", Figures.percent(charge.keepPercent())));
            facts.add(new Fact("charge after 24 h", Figures.percent(charge.endPercent())));
        }
        return facts;
    }

    private static String sun(DaySun sun) {
        return switch (sun.kind()) {
            case POLAR_DAY -> "up all day";
            case POLAR_NIGHT -> "never up";
            case DAY_AND_NIGHT -> clock(sun.riseHour()) + " to " + clock(sun.setHour());
        };
    }

    private static String clock(@Nullable Double hour) {
        return hour == null ? "not on this date" : ClockHour.text(hour);
    }
}
