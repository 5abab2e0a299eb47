package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.file.table.TablePart.CategoryFrom;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads one row as a part. */
final class PartReader {

    private final Sheet sheet;
    private final Misplaced misplaced;
    private final QuantityCells quantities;
    private final MassCells masses;
    private final StationCells stations;
    private final TextCells texts;
    private final WordCells words;

    PartReader(Sheet sheet, UnitNumbers numbers) {
        this.sheet = sheet;
        this.misplaced = new Misplaced(sheet);
        this.quantities = new QuantityCells(sheet);
        this.masses = new MassCells(sheet, numbers);
        this.stations = new StationCells(sheet, numbers);
        this.texts = new TextCells(sheet);
        this.words = new WordCells(sheet);
    }

    /**
     * The part of this row; nothing where the row has a problem.
     *
     * @param section assembly named by a heading above; null = none
     */
    Optional<PartRow> read(TableRow row, @Nullable String section) {
        int problems = sheet.notes().problemCount();
        int notices = sheet.notes().noticeCount();
        Optional<PartRow> part = misplaced.check(row) ? Optional.of(partRow(row, section)) : Optional.empty();
        if (sheet.notes().problemCount() == problems) {
            return part;
        }
        // what was taken for granted in a row that is not imported would only hide its problem
        sheet.notes().keepNotices(notices);
        return Optional.empty();
    }

    private PartRow partRow(TableRow row, @Nullable String section) {
        String name = texts.name(row);
        int quantity = quantities.read(row);
        PieceMass mass = masses.read(row, quantity);
        return new PartRow(part(row, name, quantity, mass, section), mass.written());
    }

    private TablePart part(TableRow row, String name, int quantity, PieceMass mass, @Nullable String section) {
        Optional<Basis> basis = words.basis(row);
        Optional<Category> given = words.category(row);
        Optional<Category> proposed = given.isPresent() ? given : CategoryWords.proposedBy(name);
        CategoryFrom from = given.isPresent()
                ? CategoryFrom.COLUMN
                : proposed.isPresent() ? CategoryFrom.NAME : CategoryFrom.NOTHING;
        String assembly = texts.assembly(row);
        return new TablePart(
                row.number(),
                name,
                quantity,
                mass.unitMass(),
                basis.orElse(Basis.GUESSED),
                basis.isPresent(),
                proposed.orElse(Category.STRUCTURE),
                from,
                assembly == null ? section : assembly,
                stations.read(row),
                words.state(row).orElse(null),
                texts.supply(row),
                texts.note(row));
    }
}
