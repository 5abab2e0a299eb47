package dev.ledgerwing.core.file.table;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The row of headings.
 *
 * @param row counted from 1; 0 = there is none
 */
record Header(int row, List<HeaderCell> cells) {

    static final Header NONE = new Header(0, List.of());

    private static final int SEARCHED_ROWS = 60;
    private static final int LEAST_HEADINGS = 2;

    Header {
        cells = List.copyOf(cells);
    }

    /** The row among the first ones with the most headings that are understood, two at least; the first of equals. */
    static Optional<Header> find(List<TableRow> rows) {
        Header best = NONE;
        for (TableRow row : rows.subList(0, Math.min(rows.size(), SEARCHED_ROWS))) {
            Header header = of(row);
            if (header.understood() > best.understood()) {
                best = header;
            }
        }
        return best.understood() >= LEAST_HEADINGS ? Optional.of(best) : Optional.empty();
    }

    static Header of(TableRow row) {
        return new Header(row.number(), row.cells().stream().map(HeaderCell::of).toList());
    }

    /** How many different things its columns hold. */
    int understood() {
        return (int) cells.stream()
                .filter(HeaderCell::isUnderstood)
                .map(HeaderCell::meaning)
                .filter(Objects::nonNull)
                .distinct()
                .count();
    }

    /** Number of the last column with a heading. */
    int width() {
        int width = cells.size();
        while (width > 0 && cells.get(width - 1).text().isEmpty()) {
            width--;
        }
        return width;
    }

    HeaderCell cell(int column) {
        return column <= cells.size() ? cells.get(column - 1) : HeaderCell.of("");
    }
}
