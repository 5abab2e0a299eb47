package dev.ledgerwing.core.file.table;

import java.util.List;
import java.util.Optional;

/** Finds rows that name the assembly of the rows below them. */
final class SectionRows {

    private final Sheet sheet;

    SectionRows(Sheet sheet) {
        this.sheet = sheet;
    }

    /**
     * A text alone in its row is such a heading. Where a column gives assemblies, a name alone may as well be a part of which
     * nothing else is known; there it is a heading only if the next row repeats it as its assembly. In a plain list of names every name
     * is a part.
     */
    boolean isHeading(TableRow row, Optional<TableRow> next) {
        if (!givesAmounts() || !isTextAlone(row)) {
            return false;
        }
        Cell only = row.filled().get(0);
        if (TotalLabel.of(only).isPresent()) {
            return false;
        }
        if (!sheet.columns().has(Meaning.ASSEMBLY) || sheet.columns().meaning(only.column()) == Meaning.ASSEMBLY) {
            return true;
        }
        return next.map(below -> sheet.cell(below, Meaning.ASSEMBLY).text())
                .filter(assembly -> Words.plain(assembly).equals(Words.plain(only.text())))
                .isPresent();
    }

    /** Whether nothing but one text stands in the row, in a column where a heading may stand. */
    boolean isTextAlone(TableRow row) {
        List<Cell> filled = row.filled();
        if (filled.size() != 1 || filled.get(0).text().chars().noneMatch(Character::isLetter)) {
            return false;
        }
        int column = filled.get(0).column();
        Meaning meaning = sheet.columns().meaning(column);
        return column == 1
                ? !meaning.isNumeric() && meaning != Meaning.QUANTITY
                : meaning == Meaning.NAME || meaning == Meaning.PART_CODE || meaning == Meaning.ASSEMBLY;
    }

    private boolean givesAmounts() {
        Columns columns = sheet.columns();
        return columns.has(Meaning.QUANTITY) || columns.has(Meaning.UNIT_MASS) || columns.has(Meaning.LINE_MASS);
    }
}
