package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.ColumnMeaning;
import dev.ledgerwing.core.file.table.Meaning;
import dev.ledgerwing.core.file.table.PartsTable;
import dev.ledgerwing.core.file.table.TableReading;
import java.util.List;
import java.util.Optional;

/**
 * A table as it was read with what a member chose for its columns.
 *
 * @param columns every column, also those of a table that cannot be read until somebody says what they hold
 */
record ReadTable(TableReading reading, ColumnChoices choices, List<ColumnView> columns) {

    private static final ColumnMeaning ANY_CHOICE = new ColumnMeaning(1, Meaning.NAME, null);

    static ReadTable of(byte[] bytes, ColumnChoices choices) {
        TableReading reading = PartsTable.read(bytes, choices.columns());
        List<ColumnView> columns = ColumnView.of(reading.columns(), PartsTable.sample(bytes), choices);
        return new ReadTable(reading, choices, columns);
    }

    /** Why nobody can do anything with a table; nothing where saying what its columns hold makes it readable. */
    static Optional<String> hopeless(byte[] bytes) {
        Optional<String> refusal = PartsTable.read(bytes).refusal();
        boolean columnsWouldDo = refusal.isPresent()
                && PartsTable.read(bytes, List.of(ANY_CHOICE)).refusal().isEmpty();
        return columnsWouldDo ? Optional.empty() : refusal;
    }
}
