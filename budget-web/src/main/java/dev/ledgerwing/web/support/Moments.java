package dev.ledgerwing.web.support;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.springframework.stereotype.Component;

/** Writes moments for people, in the server's time zone; pages may use it as {@code ${@moments.text(...)}}. */
@Component
public class Moments {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_AND_YEAR = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private final Clock clock;

    Moments(Clock clock) {
        this.clock = clock;
    }

    /** {@code today 14:10}, {@code 21 Nov} in this year, {@code 21 Nov 2025} in another. */
    public String text(Instant moment) {
        ZonedDateTime then = moment.atZone(clock.getZone());
        LocalDate today = LocalDate.now(clock);
        if (then.toLocalDate().equals(today)) {
            return "today " + TIME.format(then);
        }
        return (then.getYear() == today.getYear() ? DAY : DAY_AND_YEAR).format(then);
    }

    /** A day in full: {@code 21 Nov 2025}. */
    public static String day(LocalDate day) {
        return DAY_AND_YEAR.format(day);
    }

    /** Day and time in full: {@code 21 Nov 2025 14:10}. */
    public String full(Instant moment) {
        ZonedDateTime then = moment.atZone(clock.getZone());
        return DAY_AND_YEAR.format(then) + " " + TIME.format(then);
    }
}
