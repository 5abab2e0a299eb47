package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.ColumnMeaning;
import dev.ledgerwing.core.file.table.Meaning;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The columns that a member understands otherwise than the reader does. Short enough to travel in an address: {@code
 * 3.UNIT_MASS.oz~5.IGNORED}.
 */
record ColumnChoices(List<ColumnMeaning> columns) {

    static final ColumnChoices NONE = new ColumnChoices(List.of());

    private static final String BETWEEN = "~";
    private static final Pattern ONE = Pattern.compile("([1-9]\\d{0,2})\\.([A-Z_]{1,20})(?:\\.([a-z]{1,4}))?");

    ColumnChoices {
        columns = List.copyOf(columns);
    }

    /** Reads what {@link #text} wrote; nothing where somebody tampered with it. */
    static Optional<ColumnChoices> parse(String text) {
        List<ColumnMeaning> columns = new ArrayList<>();
        for (String one : text.isEmpty() ? List.<String>of() : List.of(text.split(BETWEEN, -1))) {
            @Nullable ColumnMeaning column = column(one);
            if (column == null) {
                return Optional.empty();
            }
            columns.add(column);
        }
        return Optional.of(new ColumnChoices(columns));
    }

    private static @Nullable ColumnMeaning column(String text) {
        Matcher parts = ONE.matcher(text);
        if (!parts.matches()) {
            return null;
        }
        try {
            return new ColumnMeaning(Integer.parseInt(parts.group(1)), Meaning.valueOf(parts.group(2)), parts.group(3));
        } catch (IllegalArgumentException unknown) {
            return null;
        }
    }

    String text() {
        return columns.stream()
                .map(column ->
                        column.column() + "." + column.meaning() + (column.unit() == null ? "" : "." + column.unit()))
                .collect(Collectors.joining(BETWEEN));
    }

    Optional<ColumnMeaning> of(int column) {
        return columns.stream().filter(choice -> choice.column() == column).findFirst();
    }

    /** These choices with others in place of those for the same columns. */
    ColumnChoices and(Collection<ColumnMeaning> others) {
        TreeMap<Integer, ColumnMeaning> all = new TreeMap<>();
        columns.forEach(choice -> all.put(choice.column(), choice));
        others.forEach(choice -> all.put(choice.column(), choice));
        return new ColumnChoices(List.copyOf(all.values()));
    }
}
