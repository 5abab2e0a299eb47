package dev.ledgerwing.core.file.table;

import java.util.Locale;
import java.util.Set;

/** What people write in place of a number they do not have. */
final class NotKnown {

    private static final Set<String> WORDS = Set.of(
            "?",
            "??",
            "???",
            "-",
            "--",
            "–",
            "—",
            "n/a",
            "n.a.",
            "na",
            "tbd",
            "t.b.d.",
            "tbc",
            "unknown",
            "not known",
            "unbekannt",
            "k.a.",
            "k. a.",
            "offen");

    private NotKnown() {}

    static boolean says(String text) {
        return WORDS.contains(text.toLowerCase(Locale.ROOT));
    }
}
