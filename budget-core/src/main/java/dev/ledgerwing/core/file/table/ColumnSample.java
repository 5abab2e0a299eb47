package dev.ledgerwing.core.file.table;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What stands in a column, so that a person can say what it holds.
 *
 * @param number counted from 1
 * @param cells the first different texts below the headings; empty = none among the first rows
 */
public record ColumnSample(int number, List<String> cells) {

    private static final int SEARCHED_ROWS = 200;
    private static final int MOST_CELLS = 3;

    public ColumnSample {
        cells = List.copyOf(cells);
    }

    static List<ColumnSample> of(String text, char delimiter) {
        List<TableRow> rows = TableRows.first(text, delimiter, SEARCHED_ROWS);
        int headerRow = Header.find(rows).map(Header::row).orElse(0);
        int width = rows.stream()
                .flatMap(row -> row.filled().stream())
                .mapToInt(Cell::column)
                .max()
                .orElse(0);
        return IntStream.rangeClosed(1, width)
                .mapToObj(column -> new ColumnSample(column, cells(rows, headerRow, column)))
                .toList();
    }

    private static List<String> cells(List<TableRow> rows, int headerRow, int column) {
        return rows.stream()
                .filter(row -> row.number() > headerRow)
                .map(row -> row.cell(column))
                .filter(Cell::isFilled)
                .map(Cell::text)
                .distinct()
                .limit(MOST_CELLS)
                .toList();
    }
}
