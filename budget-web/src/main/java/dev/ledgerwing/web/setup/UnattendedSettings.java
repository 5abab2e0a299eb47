package dev.ledgerwing.web.setup;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * The first account without a visit: the environment variables {@code LEDGERWING_FIRST_MEMBER} and
 * {@code LEDGERWING_FIRST_PASSPHRASE}, or the settings of the same names.
 */
@ConfigurationProperties("ledgerwing.first")
record UnattendedSettings(@Nullable String member, @Nullable String passphrase) {

    boolean given() {
        return member != null || passphrase != null;
    }

    /** Keeps the passphrase out of logs. */
    @Override
    public String toString() {
        return "UnattendedSettings[member=" + member + "]";
    }
}
