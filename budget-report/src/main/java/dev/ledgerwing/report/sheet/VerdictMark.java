package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.verdict.Verdict;
import java.util.Locale;

/**
 * A verdict ready to be shown as word, shape and colour.
 *
 * @param kind {@code holds}, {@code tight}, {@code unknown} or {@code breaks}; chooses shape and colour
 * @param words the verdict's word, with what goes with it
 */
public record VerdictMark(String kind, String words) {

    public static VerdictMark of(Verdict verdict) {
        return saying(verdict, verdict.word());
    }

    static VerdictMark saying(Verdict verdict, String words) {
        return new VerdictMark(verdict.name().toLowerCase(Locale.ROOT), words);
    }
}
