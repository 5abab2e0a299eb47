package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Optional;

/** Holds a stated sum against the sum of its rows, and says how it came out. */
final class TotalCheck {

    private final Sheet sheet;
    private final MassCells masses;

    TotalCheck(Sheet sheet, MassCells masses) {
        this.sheet = sheet;
        this.masses = masses;
    }

    /**
     * @param covered the rows it stands for
     * @param sumsBefore what the sums among them state together
     */
    TableTotal total(Entry entry, TotalLabel label, CoveredRows covered, Mass sumsBefore) {
        Cell cell = statedCell(entry.sorted().row(), label);
        Optional<WrittenMass> stated = masses.stated(cell);
        boolean agrees = stated.filter(covered::agreesWith).isPresent();
        String sentence = "Row " + entry.row() + " " + label.cell().quoted() + " "
                + stated.map(sum -> compared(sum, covered) + verdict(sum, covered, sumsBefore))
                        .orElse("is taken as a sum, but gives none that can be read.")
                + covered.gaps();
        if (!agrees || !covered.isComplete()) {
            sheet.notes().notice(cell, sentence);
        }
        Mass statedMass = stated.map(TotalCheck::mass).orElse(null);
        return new TableTotal(
                entry.row(),
                Cell.quoted(label.cell().text()),
                statedMass,
                covered.sum(),
                agrees,
                covered.isComplete(),
                sentence);
    }

    private Cell statedCell(TableRow row, TotalLabel label) {
        Cell line = sheet.cell(row, Meaning.LINE_MASS);
        Cell each = sheet.cell(row, Meaning.UNIT_MASS);
        Cell filled = line.isFilled() ? line : each;
        return filled.isFilled() ? filled : label.cell();
    }

    private static String compared(WrittenMass stated, CoveredRows covered) {
        return "states " + Figures.METRIC.mass(mass(stated)) + "; " + covered.addedUp();
    }

    private static String verdict(WrittenMass stated, CoveredRows covered, Mass sumsBefore) {
        if (covered.agreesWith(stated)) {
            return ": it agrees.";
        }
        Mass apart = mass(stated).minus(covered.sum());
        String by = Figures.METRIC.mass(new Mass(Math.abs(apart.mg())));
        return ": it is " + by + (apart.isNegative() ? " less." : " more.") + covered.likelyCause(stated, sumsBefore);
    }

    private static Mass mass(WrittenMass written) {
        return Mass.ofGrams(written.grams().doubleValue());
    }
}
