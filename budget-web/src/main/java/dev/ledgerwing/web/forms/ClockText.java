package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Reading;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and writes days and times as they stand in forms. */
public final class ClockText {

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("uuuu-MM-dd").withResolverStyle(ResolverStyle.STRICT);
    private static final int EARLIEST = 1950;
    private static final int LATEST = 2200;
    private static final Pattern HOURS =
            Pattern.compile("(?i)([-+−]?)(\\d{1,2})(?::(\\d{2})|([.,]\\d{1,4}))?\\s*(?:h|utc)?");
    private static final int FARTHEST_AHEAD = 14;
    private static final int OF_A_DAY = 24;

    private ClockText() {}

    /** {@code 6:30}; to the minute. */
    public static String hours(double hours) {
        long minutes = Math.round(Math.abs(hours) * 60);
        String rest = minutes % 60 < 10 ? "0" + minutes % 60 : "" + minutes % 60;
        return (hours < 0 ? "−" : "") + minutes / 60 + ":" + rest;
    }

    static Reading<LocalDate> day(String text) {
        if (text.isEmpty()) {
            return Reading.nothing();
        }
        try {
            LocalDate day = LocalDate.parse(text, DAY);
            return day.getYear() < EARLIEST || day.getYear() > LATEST
                    ? Reading.wrong("lies outside the years " + EARLIEST + " to " + LATEST)
                    : Reading.of(day);
        } catch (DateTimeException noDay) {
            return Reading.wrong("is not a day such as 2026-06-21: “" + shortened(text) + "”");
        }
    }

    static Reading<Double> hour(String text) {
        return hours(text, 0, OF_A_DAY, "is not a time from 0:00 to 24:00 such as 6:30: ");
    }

    static Reading<Double> hoursAhead(String text) {
        return hours(
                text,
                -FARTHEST_AHEAD,
                FARTHEST_AHEAD,
                "is not a number of hours from " + Figures.number(-FARTHEST_AHEAD, 0) + " to " + FARTHEST_AHEAD
                        + " such as 2 or −3:30: ");
    }

    private static Reading<Double> hours(String text, int least, int most, String wrong) {
        if (text.isEmpty()) {
            return Reading.nothing();
        }
        Matcher matcher = HOURS.matcher(text);
        double hours = matcher.matches() ? hours(matcher) : Double.NaN;
        return hours >= least && hours <= most ? Reading.of(hours) : Reading.wrong(wrong + "“" + shortened(text) + "”");
    }

    /** Two digits behind a colon are minutes, behind a point or comma they are a share of an hour. */
    private static double hours(Matcher matcher) {
        String minutes = matcher.group(3);
        String share = matcher.group(4);
        double rest = minutes != null
                ? Integer.parseInt(minutes) / 60.0
                : share != null ? Double.parseDouble("0" + share.replace(',', '.')) : 0;
        boolean behind = "-−".contains(matcher.group(1)) && !matcher.group(1).isEmpty();
        boolean isClock = minutes == null || Integer.parseInt(minutes) < 60;
        double hours = Integer.parseInt(matcher.group(2)) + rest;
        return isClock ? (behind ? -hours : hours) + 0.0 : Double.NaN;
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}
