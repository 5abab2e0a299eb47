package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.quantity.LengthUnit;
import dev.ledgerwing.core.quantity.MassUnit;
import dev.ledgerwing.core.quantity.Reading;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.TreeSet;

/** Reads numbers that count in a unit: their own, else the one of their column, else grams and millimetres, which is said. */
final class UnitNumbers {

    private final Sheet sheet;
    private final TreeSet<Integer> withoutUnit = new TreeSet<>();

    UnitNumbers(Sheet sheet) {
        this.sheet = sheet;
    }

    /** A number of a cell in grams or millimetres. */
    record Measured(BigDecimal value, BigDecimal halfDigit) {}

    /** Nothing where the cell is empty, says that it is not known, or counts in a unit nobody knows. */
    Reading<Measured> read(Cell cell) {
        if (!cell.isFilled() || NotKnown.says(cell.text())) {
            return Reading.nothing();
        }
        Meaning meaning = sheet.columns().meaning(cell.column());
        Reading<NumberText> reading = NumberText.read(cell.text(), sheet.mark());
        NumberText number = reading.found();
        if (number == null) {
            return Reading.wrong(reading.problem().orElseThrow());
        }
        pointOutIfOpen(cell, number);
        if (number.unit().isEmpty()) {
            return bare(cell, number, meaning);
        }
        return meaning.unit(number.unit())
                .map(unit -> Reading.of(scaled(number, meaning, unit)))
                .orElseGet(() -> Reading.wrong("has a unit that is not known: " + Cell.quoted(number.unit())));
    }

    /** Says once for each column that its numbers without a unit were taken in the usual one. */
    void sayWhatUnitWasTaken(Header header) {
        for (int column : withoutUnit) {
            Meaning meaning = sheet.columns().meaning(column);
            sheet.notes()
                    .notice(
                            new Cell(
                                    Math.max(1, header.row()),
                                    column,
                                    header.cell(column).text()),
                            "This column gives no unit: its numbers without one are taken in "
                                    + (meaning.isMass() ? "grams." : "millimetres."));
        }
    }

    /** Says that a number of {@code cell} could be read in another way too, if it could. */
    void pointOutIfOpen(Cell cell, NumberText number) {
        if (sheet.mark().leavesOpen(number.digits())) {
            String read = NumberShape.value(number.digits(), sheet.mark().mark())
                    .map(BigDecimal::toPlainString)
                    .orElse(number.digits());
            sheet.notes()
                    .notice(
                            cell,
                            cell.quoted() + " can be read in two ways, as nothing in the table tells which of point and"
                                    + " comma is its decimal mark: " + read + " is taken.");
        }
    }

    private Reading<Measured> bare(Cell cell, NumberText number, Meaning meaning) {
        if (sheet.columns().strangeUnits().contains(cell.column())) {
            return Reading.nothing();
        }
        Optional<String> unit =
                Optional.ofNullable(sheet.columns().all().get(cell.column() - 1).unit());
        if (unit.isEmpty()) {
            withoutUnit.add(cell.column());
        }
        return Reading.of(scaled(number, meaning, unit.orElse(meaning.isMass() ? "g" : "mm")));
    }

    private static Measured scaled(NumberText number, Meaning meaning, String unit) {
        BigDecimal scale = BigDecimal.valueOf(
                meaning.isMass()
                        ? MassUnit.spelt(unit).orElseThrow().inGrams()
                        : LengthUnit.spelt(unit).orElseThrow().inMm());
        return new Measured(number.value().multiply(scale), number.halfDigit().multiply(scale));
    }
}
