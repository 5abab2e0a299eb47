package dev.ledgerwing.report.review;

import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.text.PlainPage;

/** A verdict as shape and word, in a column of its own. */
final class VerdictText {

    static final int WIDTH = 13;

    private VerdictText() {}

    static String shape(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> "●";
            case TIGHT -> "◐";
            case UNKNOWN -> "◇";
            case BREAKS -> "▲";
        };
    }

    static String column(Verdict verdict) {
        return PlainPage.padded(shape(verdict) + " " + verdict.word(), WIDTH);
    }
}
