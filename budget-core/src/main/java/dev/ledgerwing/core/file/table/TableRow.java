package dev.ledgerwing.core.file.table;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One row of cells.
 *
 * @param number counted from 1
 * @param cells without the space around them, line breaks as a line feed
 */
record TableRow(int number, List<String> cells) {

    TableRow {
        cells = List.copyOf(cells);
    }

    /** The cell in this column; empty where the row is shorter or the column is 0. */
    Cell cell(int column) {
        String text = column >= 1 && column <= cells.size() ? cells.get(column - 1) : "";
        return new Cell(number, column, text);
    }

    boolean isBlank() {
        return cells.stream().allMatch(String::isEmpty);
    }

    List<Cell> filled() {
        return IntStream.rangeClosed(1, cells.size())
                .mapToObj(this::cell)
                .filter(Cell::isFilled)
                .toList();
    }
}
