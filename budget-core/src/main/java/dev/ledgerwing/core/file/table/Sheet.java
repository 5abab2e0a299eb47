package dev.ledgerwing.core.file.table;

/** What every reader of cells needs: which column is which, how numbers are written, where to say what was found. */
record Sheet(Columns columns, DecimalMark mark, Notes notes) {

    Cell cell(TableRow row, Meaning meaning) {
        return columns.cell(row, meaning);
    }
}
