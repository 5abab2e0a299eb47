package dev.ledgerwing.core.file.table;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds cells that stand where they do not belong: beyond the headings, or pushed aside by a decimal comma without quotes. */
final class Misplaced {

    private static final Pattern DIGITS = Pattern.compile("\\d+");
    private static final Pattern DECIMALS = Pattern.compile("\\d{1,4}");
    private static final Set<Meaning> NEVER_DIGITS =
            Set.of(Meaning.ASSEMBLY, Meaning.CATEGORY, Meaning.BASIS, Meaning.STATE, Meaning.SUPPLIER);

    private static final List<Character> DELIMITERS = List.of(',', ';', '\t');
    private static final int LEAST_DELIMITERS = 2;

    private final Sheet sheet;

    Misplaced(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Whether the cells stand where they belong; otherwise nothing in the row can be trusted. */
    boolean check(TableRow row) {
        List<Cell> beyond = row.filled().stream()
                .filter(cell -> cell.column() > sheet.columns().all().size())
                .toList();
        for (TableColumn column : sheet.columns().all()) {
            if (column.meaning().isMass() && looksCut(row, column, !beyond.isEmpty())) {
                Cell cell = row.cell(column.number());
                sheet.notes()
                        .problem(
                                cell,
                                "The row looks pushed aside by a decimal comma: "
                                        + Cell.quoted(cell.text() + ","
                                                + row.cell(column.number() + 1).text())
                                        + ". Put such numbers in quotation marks, or part the cells by semicolons.");
                return false;
            }
        }
        beyond.forEach(this::pointOut);
        row.filled().stream().filter(this::looksLikeSeveralRows).forEach(this::pointOutRows);
        return true;
    }

    private boolean looksCut(TableRow row, TableColumn column, boolean tooLong) {
        boolean cut = sheet.mark().commaParted()
                && DIGITS.matcher(row.cell(column.number()).text()).matches()
                && DECIMALS.matcher(row.cell(column.number() + 1).text()).matches();
        return cut && (tooLong || NEVER_DIGITS.contains(sheet.columns().meaning(column.number() + 1)));
    }

    private void pointOut(Cell cell) {
        sheet.notes().notice(cell, cell.quoted() + " stands beyond the last heading and is not read.");
    }

    /** A quotation mark too few makes one cell of everything up to the next one. */
    private boolean looksLikeSeveralRows(Cell cell) {
        int least = Math.max(LEAST_DELIMITERS, sheet.columns().all().size() - LEAST_DELIMITERS);
        return cell.text()
                .lines()
                .skip(1)
                .anyMatch(line -> DELIMITERS.stream()
                        .anyMatch(delimiter ->
                                line.chars().filter(c -> c == delimiter).count() >= least));
    }

    private void pointOutRows(Cell cell) {
        sheet.notes()
                .notice(
                        cell,
                        "This cell goes over several lines that look like rows of their own. Is a quotation mark missing?");
    }
}
