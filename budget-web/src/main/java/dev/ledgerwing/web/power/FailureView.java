package dev.ledgerwing.web.power;

import dev.ledgerwing.core.power.failure.Failure;
import dev.ledgerwing.core.power.failure.FailureRow;
import dev.ledgerwing.core.power.failure.FailureTable;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What goes dark when one thing fails.
 *
 * @param losing failures that take something with them, or of which that is not known, the gravest first
 * @param harmless failures that take nothing
 * @param chosen the one that is looked at; null = none
 * @param isUnknown whether one was asked for that there is not, or no longer
 */
record FailureView(
        List<Row> losing, List<Row> harmless, @Nullable Row chosen, boolean isUnknown) {

    /**
     * One failure.
     *
     * @param key its place in addresses
     * @param does what it does, in sentences
     */
    record Row(String key, String words, List<String> does, Verdict verdict) {}

    static FailureView of(FailureTable table, @Nullable String failed) {
        FailureWords words = new FailureWords(table.statement());
        List<Row> losing = table.rows().stream()
                .filter(FailureView::takesSomething)
                .map(row -> row(row, words))
                .toList();
        List<Row> harmless = table.rows().stream()
                .filter(row -> !takesSomething(row))
                .map(row -> row(row, words))
                .toList();
        Row chosen = chosen(table, failed).map(row -> row(row, words)).orElse(null);
        return new FailureView(losing, harmless, chosen, chosen == null && failed != null && !failed.isBlank());
    }

    /** The failure of this place in addresses; empty where there is none. */
    static Optional<FailureRow> chosen(FailureTable table, @Nullable String failed) {
        return table.rows().stream()
                .filter(row -> key(row.failure()).equals(failed))
                .findFirst();
    }

    private static boolean takesSomething(FailureRow row) {
        return !row.functions().isEmpty()
                || !row.loads().isEmpty()
                || !row.unjudged().isEmpty()
                || !row.overloads().isEmpty()
                || !row.redundant().isEmpty();
    }

    private static Row row(FailureRow row, FailureWords words) {
        return new Row(key(row.failure()), row.failure().words(), words.sentences(row), row.verdict());
    }

    /** {@code source.flight-pack}, {@code element.main-feed.2}, {@code rail.avionics}. */
    private static String key(Failure failure) {
        var at = failure.at();
        return switch (failure.kind()) {
            case SOURCE_OUT -> "source." + failure.code();
            case RAIL_SHORTED -> "rail." + failure.code();
            case ELEMENT_OPEN -> "element." + failure.code() + "." + (at == null ? 0 : at.number());
        };
    }
}
