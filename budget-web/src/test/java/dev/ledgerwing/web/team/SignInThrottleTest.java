package dev.ledgerwing.web.team;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.web.team.SignInThrottle.Attempt;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SignInThrottleTest {

    private static final Attempt MARA = new Attempt("mara", "10.0.0.7");

    private final HandClock clock = new HandClock();
    private final SignInThrottle throttle = new SignInThrottle(clock);

    @Test
    void letsFiveAttemptsThroughAtOnceAndThenAsksToWait() {
        assertThat(attempts(5)).containsOnly(Duration.ZERO);
        assertThat(throttle.begin(MARA)).isEqualTo(Duration.ofSeconds(5));
    }

    @Test
    void doublesTheWaitWithEveryFurtherAttemptUpToTenMinutes() {
        attempts(5);
        for (long seconds : new long[] {5, 10, 20, 40, 80, 160, 320, 600, 600}) {
            assertThat(throttle.begin(MARA)).isEqualTo(Duration.ofSeconds(seconds));
            clock.pass(Duration.ofSeconds(seconds));
            assertThat(throttle.begin(MARA)).isZero();
        }
    }

    @Test
    void waitsNoLongerForTryingAgainTooEarly() {
        attempts(5);
        clock.pass(Duration.ofSeconds(4));
        assertThat(throttle.begin(MARA)).isEqualTo(Duration.ofSeconds(1));
        assertThat(throttle.begin(MARA)).isEqualTo(Duration.ofSeconds(1));
    }

    @Test
    void keepsNamesAndAddressesApart() {
        attempts(5);
        assertThat(throttle.begin(new Attempt("jonas", "10.0.0.7"))).isZero();
        assertThat(throttle.begin(new Attempt("mara", "10.0.0.8"))).isZero();
    }

    @Test
    void forgetsEverythingAfterASuccess() {
        attempts(5);
        throttle.succeeded(MARA);
        assertThat(attempts(5)).containsOnly(Duration.ZERO);
    }

    private List<Duration> attempts(int count) {
        return IntStream.range(0, count).mapToObj(i -> throttle.begin(MARA)).toList();
    }

    /** Stands still until somebody moves its hands. */
    private static final class HandClock extends Clock {

        private Instant now = Instant.parse("2026-03-01T09:00:00Z");

        void pass(Duration time) {
            now = now.plus(time);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException("this clock has one zone");
        }
    }
}
