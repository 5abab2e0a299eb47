package dev.ledgerwing.core.file.table;

import java.util.Optional;

/** Tells sums from parts whose name only begins like one ({@code Total pressure probe}). */
final class TotalRows {

    private final Sheet sheet;
    private final QuantityCells quantities;

    TotalRows(Sheet sheet) {
        this.sheet = sheet;
        this.quantities = new QuantityCells(sheet);
    }

    /** How the row calls itself a sum; nothing where it is none. */
    Optional<TotalLabel> label(TableRow row) {
        return candidate(row).filter(label -> {
            boolean part = isPart(row, label);
            if (part) {
                sheet.notes()
                        .notice(
                                label.cell(),
                                label.cell().quoted()
                                        + " reads like a sum, but the row gives a quantity: it is taken as a part.");
            }
            return !part;
        });
    }

    private Optional<TotalLabel> candidate(TableRow row) {
        Cell name = sheet.cell(row, Meaning.NAME);
        if (name.isFilled()) {
            return TotalLabel.of(name)
                    .or(() -> row.filled().stream()
                            .filter(cell -> cell.column() < name.column() && isText(cell))
                            .flatMap(cell -> TotalLabel.of(cell).stream())
                            .filter(TotalLabel::isBare)
                            .findFirst());
        }
        return row.filled().stream()
                .filter(this::isText)
                .flatMap(cell -> TotalLabel.of(cell).stream())
                .findFirst();
    }

    private boolean isText(Cell cell) {
        return !sheet.columns().meaning(cell.column()).isNumeric();
    }

    private boolean isPart(TableRow row, TotalLabel label) {
        if (!quantities.isGiven(row) || !sheet.cell(row, Meaning.NAME).isFilled()) {
            return false;
        }
        boolean described = sheet.cell(row, Meaning.CATEGORY).isFilled()
                || sheet.cell(row, Meaning.BASIS).isFilled()
                || sheet.cell(row, Meaning.STATE).isFilled();
        String assembly = Words.plain(sheet.cell(row, Meaning.ASSEMBLY).text());
        return described || (!label.isBare() && !label.rest().equals(assembly));
    }
}
