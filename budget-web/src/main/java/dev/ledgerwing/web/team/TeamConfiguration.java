package dev.ledgerwing.web.team;

import java.util.Map;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.crypto.password.Pbkdf2PasswordEncoder;
import org.springframework.security.crypto.password.Pbkdf2PasswordEncoder.SecretKeyFactoryAlgorithm;

@Configuration(proxyBeanMethods = false)
class TeamConfiguration {

    /** Bytes. */
    private static final int SALT_LENGTH = 16;

    /** What the OWASP Password Storage Cheat Sheet asks of PBKDF2 with HMAC-SHA-256 (from memory). */
    private static final int ROUNDS = 600_000;

    /**
     * PBKDF2, because it reads a passphrase to its end; bcrypt stops at 72 bytes, fewer than the 128 characters allowed. The
     * stored hash names its method, so that a stronger one can follow.
     */
    @Bean
    PasswordEncoder passphrases() {
        return new DelegatingPasswordEncoder("pbkdf2-600k", Map.of("pbkdf2-600k", pbkdf2()));
    }

    private static Pbkdf2PasswordEncoder pbkdf2() {
        return new Pbkdf2PasswordEncoder("", SALT_LENGTH, ROUNDS, SecretKeyFactoryAlgorithm.PBKDF2WithHmacSHA256);
    }
}
