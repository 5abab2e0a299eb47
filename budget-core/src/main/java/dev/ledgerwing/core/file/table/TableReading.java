package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A parts table as it was understood, with everything there is to say about it.
 *
 * @param trouble why the whole file cannot be read; null = it could be read
 * @param encoding name of the character set
 * @param delimiter what parts its cells
 * @param decimalMark point or comma
 * @param headerRow row of the headings, counted from 1; 0 = the table has none
 * @param parts rows that can be imported, in their order; a row with a problem is not among them
 * @param notices what was read in a way worth knowing, by row and column
 * @param problems what could not be read, by row and column; the table is not imported while there is one
 * @param totals every row taken as a sum of others
 * @param assumed what was taken for things the table does not say at all, one sentence each
 */
public record TableReading(
        @Nullable String trouble,
        String encoding,
        char delimiter,
        char decimalMark,
        int headerRow,
        List<TableColumn> columns,
        List<TablePart> parts,
        List<CellNote> notices,
        List<CellNote> problems,
        List<TableTotal> totals,
        List<String> assumed) {

    public TableReading {
        columns = List.copyOf(columns);
        parts = List.copyOf(parts);
        notices = List.copyOf(notices);
        problems = List.copyOf(problems);
        totals = List.copyOf(totals);
        assumed = List.copyOf(assumed);
    }

    static TableReading refused(String sentence) {
        return new TableReading(
                sentence, "", ',', '.', 0, List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    public Optional<String> refusal() {
        return Optional.ofNullable(trouble);
    }

    /** Whether it can be imported: readable, free of problems and with a part in it. */
    public boolean isUsable() {
        return trouble == null && problems.isEmpty() && !parts.isEmpty();
    }

    /** One sentence for each stated sum that is not the sum of its rows. */
    public List<String> wrongTotals() {
        return totals.stream()
                .filter(total -> total.stated() != null && !total.agrees())
                .map(TableTotal::sentence)
                .toList();
    }

    /** Sum of the parts whose mass is known. */
    public Mass knownMass() {
        return parts.stream().map(TablePart::lineMass).reduce(Mass.ZERO, Mass::plus);
    }

    public long partsOfUnknownMass() {
        return parts.stream().filter(part -> part.unitMass() == null).count();
    }
}
