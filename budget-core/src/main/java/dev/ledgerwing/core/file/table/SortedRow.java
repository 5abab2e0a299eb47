package dev.ledgerwing.core.file.table;

import org.jspecify.annotations.Nullable;

/**
 * A row and what kind it is.
 *
 * @param label only of a total
 */
record SortedRow(TableRow row, Kind kind, @Nullable TotalLabel label) {

    /** The kinds of rows below the headings. */
    enum Kind {
        PART,
        /** Names the assembly of the rows below it. */
        HEADING,
        TOTAL,
        /** Text below the last sum. */
        FOOTNOTE
    }

    static SortedRow of(TableRow row, Kind kind) {
        return new SortedRow(row, kind, null);
    }
}
