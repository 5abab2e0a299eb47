package dev.ledgerwing.core.file.table;

/** Finds the headings again that printed pages repeat. */
final class RepeatedHeadings {

    private static final int LEAST_HEADINGS = 2;

    private final Sheet sheet;
    private final Header header;

    RepeatedHeadings(Sheet sheet, Header header) {
        this.sheet = sheet;
        this.header = header;
    }

    /** Whether {@code row} holds headings. They must be those of the first row: others would be misread from there on. */
    boolean isOne(TableRow row) {
        Cell name = sheet.cell(row, Meaning.NAME);
        if (header.row() == 0 || !startsAsHeader(name) || holdsNumbers(row)) {
            return false;
        }
        if (Header.of(row).understood() < LEAST_HEADINGS) {
            return false;
        }
        if (!row.filled().stream().allMatch(this::isRepeated)) {
            sheet.notes()
                    .problem(
                            name,
                            "These headings differ from those of row " + header.row()
                                    + ": bring the columns into one order, or import the two tables one after the other.");
        }
        return true;
    }

    private boolean startsAsHeader(Cell name) {
        return isRepeated(name) || HeaderCell.of(name.text()).meaning() == Meaning.NAME;
    }

    private boolean isRepeated(Cell cell) {
        return Words.plain(header.cell(cell.column()).text()).equals(Words.plain(cell.text()));
    }

    private boolean holdsNumbers(TableRow row) {
        return sheet.columns().all().stream()
                .filter(column -> column.meaning().isNumeric() || column.meaning() == Meaning.QUANTITY)
                .anyMatch(column ->
                        NumberText.digits(row.cell(column.number()).text()).isPresent());
    }
}
