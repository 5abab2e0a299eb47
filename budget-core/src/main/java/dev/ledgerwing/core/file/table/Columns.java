package dev.ledgerwing.core.file.table;

import java.util.List;
import java.util.Optional;

/**
 * The columns of a table, to be asked by what they hold.
 *
 * @param strangeUnits numbers of columns whose unit is not known, so that their bare numbers mean nothing
 */
record Columns(List<TableColumn> all, List<Integer> strangeUnits) {

    Columns {
        all = List.copyOf(all);
        strangeUnits = List.copyOf(strangeUnits);
    }

    Optional<TableColumn> of(Meaning meaning) {
        return all.stream().filter(column -> column.meaning() == meaning).findFirst();
    }

    boolean has(Meaning meaning) {
        return of(meaning).isPresent();
    }

    /** The number of the column with this meaning; 0 = there is none. */
    int number(Meaning meaning) {
        return of(meaning).map(TableColumn::number).orElse(0);
    }

    /** The cell of {@code row} with this meaning; an empty one in column 0 where the table has no such column. */
    Cell cell(TableRow row, Meaning meaning) {
        return row.cell(number(meaning));
    }

    Meaning meaning(int column) {
        return column >= 1 && column <= all.size() ? all.get(column - 1).meaning() : Meaning.IGNORED;
    }

    /** Whether the column has a heading or was given a meaning. */
    boolean isNamed(int column) {
        return column <= all.size() && (!all.get(column - 1).header().isEmpty() || meaning(column) != Meaning.IGNORED);
    }
}
