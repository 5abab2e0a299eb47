package dev.ledgerwing.core.file.table;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the rows of a table once it is known how they are parted and where the headings stand. */
record TableReader(TableText text, char delimiter, Header header) {

    TableReading read(List<TableRow> rows, List<ColumnMeaning> said) {
        Notes notes = new Notes();
        Columns columns = ColumnPlan.of(header, said, notes);
        List<TableRow> below =
                rows.stream().filter(row -> row.number() > header.row()).toList();
        Sheet sheet = new Sheet(columns, DecimalMark.of(numbers(below, columns), delimiter), notes);
        if (!columns.has(Meaning.NAME)) {
            return reading(sheet, new TableBody(List.of()), List.of());
        }
        UnitNumbers numbers = new UnitNumbers(sheet);
        TableBody body =
                TableBody.read(new RowSorter(sheet, header).sort(below), sheet, new PartReader(sheet, numbers));
        List<TableTotal> totals = Totals.check(body.entries(), new TotalCheck(sheet, new MassCells(sheet, numbers)));
        numbers.sayWhatUnitWasTaken(header);
        sayWhatHasNoHeading(below, sheet);
        if (below.isEmpty()) {
            notes.notice(new Cell(header.row(), 1, header.cell(1).text()), "There are no rows below the headings.");
        }
        return reading(sheet, body, totals);
    }

    private TableReading reading(Sheet sheet, TableBody body, List<TableTotal> totals) {
        return new TableReading(
                null,
                text.encoding(),
                delimiter,
                sheet.mark().mark(),
                header.row(),
                sheet.columns().all(),
                body.parts(),
                sheet.notes().notices(),
                sheet.notes().problems(),
                totals,
                Assumptions.of(sheet.columns(), body));
    }

    private static List<String> numbers(List<TableRow> rows, Columns columns) {
        List<TableColumn> numeric = columns.all().stream()
                .filter(column -> column.meaning().isNumeric())
                .toList();
        return rows.stream()
                .flatMap(row ->
                        numeric.stream().map(column -> row.cell(column.number()).text()))
                .map(TextCells::withoutCurrency)
                .flatMap(number -> NumberText.digits(number).stream())
                .toList();
    }

    /** Columns between the others that hold something under no heading are said to be left out, once each. */
    private void sayWhatHasNoHeading(List<TableRow> rows, Sheet sheet) {
        Stream.iterate(1, column -> column <= sheet.columns().all().size(), column -> column + 1)
                .filter(column -> !sheet.columns().isNamed(column))
                .flatMap(column -> firstFilled(rows, column).stream())
                .forEach(cell -> sheet.notes()
                        .notice(
                                new Cell(Math.max(1, header.row()), cell.column(), ""),
                                "This column has no heading and is not read; row " + cell.row() + " holds "
                                        + cell.quoted() + "."));
    }

    private static Optional<Cell> firstFilled(List<TableRow> rows, int column) {
        return rows.stream().map(row -> row.cell(column)).filter(Cell::isFilled).findFirst();
    }
}
