package dev.ledgerwing.core.file.table;

import org.jspecify.annotations.Nullable;

/**
 * What a person says a column holds.
 *
 * @param column counted from 1
 * @param unit how the unit is spelt; null = as the heading or the cells say
 */
public record ColumnMeaning(
        int column, Meaning meaning, @Nullable String unit) {

    public ColumnMeaning {
        if (column < 1 || column > PartsTable.MOST_COLUMNS) {
            throw new IllegalArgumentException(
                    "column must be from 1 to " + PartsTable.MOST_COLUMNS + ", was " + column);
        }
    }
}
