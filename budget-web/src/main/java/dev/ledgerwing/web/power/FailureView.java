package dev.ledgerwing.web.power;

import dev.ledgerwing.core.power.failure.Failure;
import dev.ledgerwing.core.power.failure.FailureRow;
import dev.ledgerwing.core.power.failure.FailureTable;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
        List<Group> losing, List<Group> harmless, @Nullable Row chosen, boolean isUnknown) {

    /**
     * One failure.
     *
     * @param key its place in addresses
     * @param does what it does, in sentences
     */
    record Row(String key, String words, List<String> does, Verdict verdict) {}

    /** Failures that do the same, in one row. */
    record Group(List<Row> rows, List<String> does, Verdict verdict) {

        static List<Group> of(Stream<Row> rows) {
            Map<String, List<Row>> alike = rows.collect(Collectors.groupingBy(
                    row -> row.verdict() + String.join(" ", row.does()), LinkedHashMap::new, Collectors.toList()));
            return alike.values().stream()
                    .map(same -> new Group(same, same.get(0).does(), same.get(0).verdict()))
                    .toList();
        }

        public boolean has(@Nullable Row row) {
            return row != null && rows.contains(row);
        }
    }

    /** How many failures take nothing. */
    public int harmlessCount() {
        return harmless.stream().mapToInt(group -> group.rows().size()).sum();
    }

    /** Whether the one that is looked at takes nothing. */
    public boolean isChosenHarmless() {
        return harmless.stream().anyMatch(group -> group.has(chosen));
    }

    static FailureView of(FailureTable table, @Nullable String failed) {
        FailureWords words = new FailureWords(table.statement());
        List<Group> losing = Group.of(
                table.rows().stream().filter(FailureView::takesSomething).map(row -> row(row, words)));
        List<Group> harmless = Group.of(
                table.rows().stream().filter(row -> !takesSomething(row)).map(row -> row(row, words)));
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
