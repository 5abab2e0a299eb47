package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.file.table.SortedRow.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sorts the rows below the headings into parts, headings of assemblies, sums and text; leaves out headings that are repeated. */
final class RowSorter {

    private final RepeatedHeadings repeated;
    private final SectionRows sections;
    private final TotalRows totals;

    RowSorter(Sheet sheet, Header header) {
        this.repeated = new RepeatedHeadings(sheet, header);
        this.sections = new SectionRows(sheet);
        this.totals = new TotalRows(sheet);
    }

    List<SortedRow> sort(List<TableRow> rows) {
        List<SortedRow> sorted = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            TableRow row = rows.get(i);
            if (!repeated.isOne(row)) {
                sorted.add(sorted(row, i + 1 < rows.size() ? Optional.of(rows.get(i + 1)) : Optional.empty()));
            }
        }
        return withFootnotes(sorted);
    }

    private SortedRow sorted(TableRow row, Optional<TableRow> next) {
        if (sections.isHeading(row, next)) {
            return SortedRow.of(row, Kind.HEADING);
        }
        return totals.label(row)
                .map(label -> new SortedRow(row, Kind.TOTAL, label))
                .orElseGet(() -> SortedRow.of(row, Kind.PART));
    }

    /** Text alone in its row, with nothing but such text between it and a sum above, and nothing below. */
    private List<SortedRow> withFootnotes(List<SortedRow> sorted) {
        int end = sorted.size();
        while (end > 0 && isLooseText(sorted.get(end - 1))) {
            end--;
        }
        if (end == 0 || sorted.get(end - 1).kind() != Kind.TOTAL) {
            return sorted;
        }
        sorted.subList(end, sorted.size()).replaceAll(row -> SortedRow.of(row.row(), Kind.FOOTNOTE));
        return sorted;
    }

    private boolean isLooseText(SortedRow row) {
        return row.kind() != Kind.TOTAL && sections.isTextAlone(row.row());
    }
}
