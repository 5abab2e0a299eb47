package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.file.table.SortedRow.Kind;
import org.jspecify.annotations.Nullable;

/**
 * A row after it was read.
 *
 * @param part null for other kinds, and for a part with a problem
 */
record Entry(SortedRow sorted, @Nullable PartRow part) {

    boolean isPartRow() {
        return sorted.kind() == Kind.PART;
    }

    int row() {
        return sorted.row().number();
    }
}
