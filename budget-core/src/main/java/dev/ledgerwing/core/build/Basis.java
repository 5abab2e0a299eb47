package dev.ledgerwing.core.build;

import java.util.Locale;

/** Where a mass comes from, weakest first. */
public enum Basis {
    GUESSED,
    CALCULATED,
    CATALOGUE,
    WEIGHED;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
