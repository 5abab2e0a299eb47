package dev.ledgerwing.web.team;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;

/**
 * Slows down guessing of passphrases: after five attempts without success, each further one for that name from that address
 * has to wait, twice as long every time. An attempt counts from its beginning, so that many at once gain nothing.
 */
@Component
class SignInThrottle {

    /** Whose passphrase is tried, and from where. */
    record Attempt(String name, String address) {}

    private record Tries(int count, Instant next) {}

    private static final int FREE_ATTEMPTS = 5;
    private static final Duration FIRST_WAIT = Duration.ofSeconds(5);
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(10);
    private static final int REMEMBERED = 10_000;

    private final Clock clock;
    private final Map<Attempt, Tries> tries = new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Attempt, Tries> eldest) {
            return size() > REMEMBERED;
        }
    };

    SignInThrottle(Clock clock) {
        this.clock = clock;
    }

    /** How long this attempt has to wait: zero lets it through and counts it. */
    synchronized Duration begin(Attempt attempt) {
        Instant now = clock.instant();
        Tries before = tries.getOrDefault(attempt, new Tries(0, now));
        if (before.next().isAfter(now)) {
            return Duration.between(now, before.next());
        }
        int count = before.count() + 1;
        tries.remove(attempt);
        tries.put(attempt, new Tries(count, now.plus(waitAfter(count))));
        return Duration.ZERO;
    }

    /** Forgets the attempts that came before a success. */
    synchronized void succeeded(Attempt attempt) {
        tries.remove(attempt);
    }

    private static Duration waitAfter(int count) {
        if (count < FREE_ATTEMPTS) {
            return Duration.ZERO;
        }
        int doublings = Math.min(count - FREE_ATTEMPTS, 10);
        Duration wait = FIRST_WAIT.multipliedBy(1L << doublings);
        return wait.compareTo(LONGEST_WAIT) < 0 ? wait : LONGEST_WAIT;
    }
}
