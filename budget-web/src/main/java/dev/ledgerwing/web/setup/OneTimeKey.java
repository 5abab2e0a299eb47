package dev.ledgerwing.web.setup;

import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.web.server.autoconfigure.ServerProperties;
import org.springframework.stereotype.Component;

/**
 * Proves that whoever creates the first account can also see what the server prints. Needed as soon as others on the network
 * can reach the server: the first of them to find it would otherwise own it.
 */
@Component
class OneTimeKey {

    /** Without letters and digits that are mistaken for each other; 32 of them, five bits each. */
    private static final String ALPHABET = "abcdefghijkmnpqrstuvwxyz23456789";

    private static final int GROUPS = 4;
    private static final int GROUP_LENGTH = 5;

    private final boolean needed;
    private final String key;

    OneTimeKey(ServerProperties server) {
        needed = reachableByOthers(server.getAddress());
        key = draw(new SecureRandom());
    }

    private static boolean reachableByOthers(@Nullable InetAddress address) {
        return address == null || !address.isLoopbackAddress();
    }

    private static String draw(SecureRandom random) {
        var drawn = new StringBuilder();
        for (int i = 0; i < GROUPS * GROUP_LENGTH; i++) {
            if (i > 0 && i % GROUP_LENGTH == 0) {
                drawn.append('-');
            }
            drawn.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return drawn.toString();
    }

    /** Whether the page of the first visit asks for the key. */
    boolean needed() {
        return needed;
    }

    /** As printed, four groups of five characters. */
    String text() {
        return key;
    }

    /** Whether somebody typed the key, with or without its dashes; always right where none is needed. */
    boolean opens(@Nullable String typed) {
        return !needed || (typed != null && MessageDigest.isEqual(bytes(typed), bytes(key)));
    }

    private static byte[] bytes(String text) {
        return text.replaceAll("[-\\s]", "").toLowerCase(Locale.ROOT).getBytes(StandardCharsets.UTF_8);
    }
}
