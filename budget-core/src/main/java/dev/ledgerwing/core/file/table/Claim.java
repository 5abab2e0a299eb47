package dev.ledgerwing.core.file.table;

import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What one column is, before it is held against the others.
 *
 * @param chosen whether a person said so
 */
record Claim(int column, HeaderCell header, boolean chosen) {

    /** A person before a heading, a clear heading before a vague one, then from left to right. */
    static final Comparator<Claim> STRONGEST_FIRST = Comparator.comparing((Claim claim) -> !claim.chosen)
            .thenComparingInt(claim -> claim.header.rank())
            .thenComparingInt(Claim::column);

    static Claim byHeading(int column, HeaderCell header) {
        return new Claim(column, header, false);
    }

    static Claim byPerson(ColumnMeaning said, HeaderCell header) {
        Meaning meaning = said.meaning();
        String spelt = said.unit();
        if (spelt == null) {
            boolean same = header.meaning() == meaning;
            String unit = same ? header.unit() : null;
            String strange = same ? header.strangeUnit() : null;
            return new Claim(said.column(), new HeaderCell(header.text(), meaning, 0, unit, strange), true);
        }
        String unit = meaning.unit(spelt).orElse(null);
        String strange = unit == null && meaning.hasUnit() ? spelt : null;
        return new Claim(said.column(), new HeaderCell(header.text(), meaning, 0, unit, strange), true);
    }

    @Nullable
    Meaning meaning() {
        return header.meaning();
    }

    boolean isRead() {
        return header.isUnderstood();
    }

    Cell cell(int row) {
        return new Cell(row, column, header.text());
    }

    TableColumn accepted() {
        return new TableColumn(column, header.text(), Objects.requireNonNull(meaning()), header.unit(), why());
    }

    TableColumn ignored(String why) {
        return new TableColumn(column, header.text(), Meaning.IGNORED, null, why);
    }

    private String why() {
        return chosen ? "chosen by hand" : "from the heading " + cell(0).quoted();
    }
}
