package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.CellNote;
import java.util.List;

/**
 * What there is to say about single cells, cut to what a page can hold.
 *
 * @param count how many there are; {@code shown} holds the first of them
 */
record CellNotes(int count, List<Row> shown) {

    private static final int MOST_SHOWN = 100;

    /**
     * One of them.
     *
     * @param heading of its column; empty = it has none
     */
    record Row(int row, int column, String heading, String text, String sentence) {}

    static CellNotes of(List<CellNote> notes, List<ColumnView> columns) {
        return new CellNotes(
                notes.size(),
                notes.stream()
                        .limit(MOST_SHOWN)
                        .map(note -> new Row(
                                note.row(),
                                note.column(),
                                heading(note.column(), columns),
                                Excerpt.of(note.text()),
                                note.sentence()))
                        .toList());
    }

    private static String heading(int column, List<ColumnView> columns) {
        return column >= 1 && column <= columns.size() ? columns.get(column - 1).heading() : "";
    }

    public int left() {
        return count - shown.size();
    }
}
