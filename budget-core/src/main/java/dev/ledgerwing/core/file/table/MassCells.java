package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.file.table.UnitNumbers.Measured;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the mass of one piece and of the whole row, and holds one against the other where both are given. */
final class MassCells {

    private static final BigDecimal LARGEST_SUM_G = BigDecimal.valueOf(1_000_000_000);

    private final Sheet sheet;
    private final UnitNumbers numbers;

    MassCells(Sheet sheet, UnitNumbers numbers) {
        this.sheet = sheet;
        this.numbers = numbers;
    }

    PieceMass read(TableRow row, int quantity) {
        Cell eachCell = sheet.cell(row, Meaning.UNIT_MASS);
        Cell lineCell = sheet.cell(row, Meaning.LINE_MASS);
        int before = sheet.notes().problemCount();
        WrittenMass each = written(eachCell, BigDecimal.ONE);
        WrittenMass line = written(lineCell, BigDecimal.valueOf(quantity));
        if (sheet.notes().problemCount() > before) {
            return PieceMass.NOT_KNOWN;
        }
        if (each != null) {
            return fromEach(each, quantity, line, lineCell);
        }
        if (line != null) {
            return new PieceMass(mass(line.grams().divide(BigDecimal.valueOf(quantity), MathContext.DECIMAL64)), line);
        }
        sayNotKnown(eachCell, lineCell);
        return PieceMass.NOT_KNOWN;
    }

    /** The sum that a total row states; nothing where it states none that can be read. */
    Optional<WrittenMass> stated(Cell cell) {
        Reading<Measured> reading = numbers.read(cell);
        return reading.value()
                .filter(measured -> measured.value().abs().compareTo(LARGEST_SUM_G) <= 0)
                .map(measured -> new WrittenMass(measured.value(), measured.halfDigit()));
    }

    private PieceMass fromEach(WrittenMass each, int quantity, @Nullable WrittenMass line, Cell lineCell) {
        WrittenMass all = each.times(quantity);
        if (line != null && !all.agreesWith(line)) {
            sheet.notes()
                    .problem(
                            lineCell,
                            lineCell.quoted() + " is not " + quantity + " times the mass of one, which makes "
                                    + Figures.METRIC.mass(mass(each.grams()).times(quantity)) + ".");
        }
        return new PieceMass(mass(each.grams()), all);
    }

    private @Nullable WrittenMass written(Cell cell, BigDecimal pieces) {
        Reading<Measured> reading = numbers.read(cell);
        Measured measured = reading.found();
        if (measured == null) {
            reading.problem().ifPresent(trouble -> refuse(cell, trouble));
            return null;
        }
        if (measured.value().signum() < 0) {
            refuse(cell, "is a negative mass");
        } else if (measured.value().compareTo(Limits.LARGEST_MASS_G.multiply(pieces)) > 0) {
            refuse(cell, "is more than a piece can weigh here, at most 1 000 000 g");
        } else if (measured.value().signum() == 0) {
            sheet.notes().notice(cell, "A mass of 0 is taken as written. If it is not known, leave the cell empty.");
        }
        return new WrittenMass(measured.value(), measured.halfDigit());
    }

    private void refuse(Cell cell, String trouble) {
        sheet.notes()
                .problem(
                        cell,
                        cell.quoted() + " " + trouble
                                + ". Write a mass as 85, 1.2 kg or 3.5 oz; leave it empty if it is not known.");
    }

    private void sayNotKnown(Cell eachCell, Cell lineCell) {
        Cell cell = eachCell.column() > 0 ? eachCell : lineCell;
        Cell said = lineCell.isFilled() && !cell.isFilled() ? lineCell : cell;
        if (said.column() == 0 || sheet.columns().strangeUnits().contains(said.column())) {
            return;
        }
        sheet.notes()
                .notice(
                        said,
                        said.isFilled()
                                ? said.quoted() + ": the mass is taken as not known, not as 0."
                                : "No mass is given: it is taken as not known, not as 0.");
    }

    private static Mass mass(BigDecimal grams) {
        return Mass.ofGrams(grams.doubleValue());
    }
}
