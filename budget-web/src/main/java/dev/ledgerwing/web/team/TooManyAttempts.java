package dev.ledgerwing.web.team;

import java.time.Duration;
import org.springframework.security.core.AuthenticationException;

/** A passphrase was tried too often; the next attempt has to wait. */
class TooManyAttempts extends AuthenticationException {

    private final Duration wait;

    TooManyAttempts(Duration wait) {
        super("too many attempts without success");
        this.wait = wait;
    }

    /** At least one, so that nobody is asked to wait for nothing. */
    long seconds() {
        return Math.max(1, wait.plusMillis(999).toSeconds());
    }
}
