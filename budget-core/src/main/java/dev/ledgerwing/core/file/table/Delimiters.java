package dev.ledgerwing.core.file.table;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Which character parts the cells of a table: the one with which most headings are understood. */
final class Delimiters {

    private static final int TRIED_ROWS = 200;

    private Delimiters() {}

    private record Trial(char delimiter, int understood, int widest) {}

    static char of(String text) {
        return Stream.of(',', ';', '\t')
                .map(delimiter -> trial(text, delimiter))
                .max(Comparator.comparingInt(Trial::understood).thenComparingInt(Trial::widest))
                .orElseThrow()
                .delimiter();
    }

    private static Trial trial(String text, char delimiter) {
        List<TableRow> rows = TableRows.first(text, delimiter, TRIED_ROWS);
        int understood = Header.find(rows).map(Header::understood).orElse(0);
        int widest = rows.stream().mapToInt(row -> row.filled().size()).max().orElse(0);
        return new Trial(delimiter, understood, widest);
    }
}
