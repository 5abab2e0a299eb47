package dev.ledgerwing.core.quantity;

import java.util.Locale;

/** How unit words are compared: without case, surrounding space and a closing full stop. */
final class Spelling {

    private Spelling() {}

    static String plain(String text) {
        String trimmed = text.strip().toLowerCase(Locale.ROOT);
        return trimmed.endsWith(".") ? trimmed.substring(0, trimmed.length() - 1) : trimmed;
    }
}
