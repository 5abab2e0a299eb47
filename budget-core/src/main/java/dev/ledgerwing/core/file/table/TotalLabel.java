package dev.ledgerwing.core.file.table;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a row says that it is a sum: {@code Total}, {@code Subtotal wing}, {@code Wing total}.
 *
 * @param rest the other words, in plain form; empty = none
 * @param first whether the word for the sum comes before them
 */
record TotalLabel(Cell cell, Kind kind, String rest, boolean first) {

    /** What rows the word stands for; see the word list. */
    enum Kind {
        SUBTOTAL,
        TOTAL,
        RUNNING
    }

    private static final WordList<Kind> WORDS = WordList.load("total-words.txt", Kind.class);
    private static final List<String> LONGEST_FIRST = WORDS.entries().keySet().stream()
            .sorted(Comparator.comparingInt(String::length).reversed())
            .toList();

    /** Only text that begins or ends with such a word, as a whole word: {@code Sump} and {@code =SUM(A1)} are none. */
    static Optional<TotalLabel> of(Cell cell) {
        String text = cell.text();
        if (text.isEmpty() || !(Character.isLetter(text.charAt(0)) || text.charAt(0) == '∑')) {
            return Optional.empty();
        }
        String plain = Words.plain(text);
        return LONGEST_FIRST.stream()
                .filter(word -> plain.equals(word) || plain.startsWith(word + " "))
                .findFirst()
                .map(word -> label(cell, word, plain.substring(word.length()), true))
                .or(() -> LONGEST_FIRST.stream()
                        .filter(word -> plain.endsWith(" " + word))
                        .findFirst()
                        .map(word -> label(cell, word, plain.substring(0, plain.length() - word.length()), false)));
    }

    private static TotalLabel label(Cell cell, String word, String rest, boolean first) {
        return new TotalLabel(cell, WORDS.meaning(word).orElseThrow(), rest.strip(), first);
    }

    /** Whether the row says no more than that it is a sum. */
    boolean isBare() {
        return rest.isEmpty() || (first && kind == Kind.SUBTOTAL);
    }
}
