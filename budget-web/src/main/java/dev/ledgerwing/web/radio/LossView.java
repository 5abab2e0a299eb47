package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.radio.LossRow;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Objects;

/** What a function is to do when the signal is lost, and what becomes of it. */
record LossView(String function, String wanted, String goesTo, String sentence, Verdict verdict) {

    static List<LossView> of(List<LossRow> rows) {
        return rows.stream()
                .map(row -> new LossView(
                        row.function().name(),
                        Objects.requireNonNullElse(row.wanted(), "not said"),
                        Objects.requireNonNullElseGet(row.goesTo(), () -> otherwise(row)),
                        row.sentence(),
                        row.verdict()))
                .toList();
    }

    private static String otherwise(LossRow row) {
        return switch (row.happens()) {
            case HOLD -> "wherever it was";
            case SILENCE -> "left to itself";
            case BOARD -> "as the flight controller decides";
            case PRESET, NOT_KNOWN -> "not known";
        };
    }
}
