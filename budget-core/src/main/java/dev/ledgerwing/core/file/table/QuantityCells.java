package dev.ledgerwing.core.file.table;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how many pieces a row stands for. Odd spellings are read only where they leave no doubt, and are pointed out. */
final class QuantityCells {

    private static final Pattern PLAIN = Pattern.compile("\\d{1,9}");
    private static final Pattern DECORATED = Pattern.compile("(?:[x×]\\s*)?(\\d{1,9})(?:[.,]0{1,2})?\\s*(.{0,12})");
    private static final Pattern NUMBER = Pattern.compile("[-+−]?\\d{1,20}(?:[.,]\\d{1,20})?");
    private static final Set<String> PIECES = Set.of(
            "", "*", "x", "×", "pc", "pc.", "pcs", "pcs.", "piece", "pieces", "off", "no", "no.", "ea", "ea.", "each",
            "stk", "stk.", "st", "st.", "stück", "mal");

    private final Sheet sheet;

    QuantityCells(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The number of pieces; 1 where none is given or it cannot be read, which is said. */
    int read(TableRow row) {
        Cell cell = sheet.cell(row, Meaning.QUANTITY);
        if (!cell.isFilled()) {
            if (cell.column() > 0) {
                sheet.notes().notice(cell, "No quantity is given: 1 is taken.");
            }
            return 1;
        }
        Optional<Integer> pieces = pieces(cell.text());
        pieces.ifPresentOrElse(
                number -> check(cell, number), () -> sheet.notes().problem(cell, trouble(cell)));
        return pieces.filter(number -> number >= 1).orElse(1);
    }

    /** Whether the row gives a quantity that can be read. */
    boolean isGiven(TableRow row) {
        return pieces(sheet.cell(row, Meaning.QUANTITY).text()).isPresent();
    }

    private void check(Cell cell, int number) {
        if (number < 1 || number > Limits.MOST_PIECES) {
            sheet.notes()
                    .problem(
                            cell,
                            "The quantity must be from 1 to 100 000, was " + number + "."
                                    + (number == 0 ? " Delete the row if the part is not aboard." : ""));
        } else if (!PLAIN.matcher(cell.text()).matches()) {
            sheet.notes().notice(cell, cell.quoted() + " is read as a quantity of " + number + ".");
        }
    }

    private static Optional<Integer> pieces(String text) {
        Matcher matcher = DECORATED.matcher(text.toLowerCase(Locale.ROOT));
        boolean readable = matcher.matches() && PIECES.contains(matcher.group(2));
        return readable ? Optional.of(Integer.parseInt(matcher.group(1))) : Optional.empty();
    }

    private static String trouble(Cell cell) {
        String text = cell.text();
        if (!NUMBER.matcher(text).matches()) {
            return cell.quoted() + " is not a quantity: write a whole number of pieces.";
        }
        boolean negative = new BigDecimal(text.replace(',', '.').replace('−', '-')).signum() < 0;
        return negative
                ? "The quantity must be from 1 to 100 000, was " + text + "."
                : cell.quoted() + " is not a whole number of pieces.";
    }
}
