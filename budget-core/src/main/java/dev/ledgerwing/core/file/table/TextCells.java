package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.build.Supply;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads cells that are taken as the text they are. */
final class TextCells {

    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\\n\\t]]");
    private static final Pattern CURRENCY = Pattern.compile("^(?:\\p{Sc}|[A-Z]{3})\\s*|\\s*(?:\\p{Sc}|[A-Z]{3})$");

    private final Sheet sheet;

    TextCells(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The name; an empty text where there is none, which is a problem. */
    String name(TableRow row) {
        Cell cell = sheet.cell(row, Meaning.NAME);
        int before = sheet.notes().problemCount();
        String name = Objects.requireNonNullElse(text(cell, Limits.LONGEST_NAME), "");
        if (name.isBlank() && sheet.notes().problemCount() == before) {
            sheet.notes().problem(cell, "The row has no name, so it cannot be a part.");
        }
        return name;
    }

    @Nullable
    String assembly(TableRow row) {
        String assembly = text(sheet.cell(row, Meaning.ASSEMBLY), Limits.LONGEST_NAME);
        return assembly == null || assembly.isBlank() ? null : assembly;
    }

    /** A heading that names the assembly of the rows below it. */
    @Nullable
    String heading(Cell cell) {
        return text(cell, Limits.LONGEST_NAME);
    }

    @Nullable
    String note(TableRow row) {
        return text(sheet.cell(row, Meaning.NOTE), Limits.LONGEST_NOTE);
    }

    Supply supply(TableRow row) {
        String partCode = text(sheet.cell(row, Meaning.PART_CODE), Limits.LONGEST_PART_CODE);
        String supplier = text(sheet.cell(row, Meaning.SUPPLIER), Limits.LONGEST_SUPPLIER);
        Double cost = cost(sheet.cell(row, Meaning.COST_EACH));
        boolean nothing = partCode == null && supplier == null && cost == null;
        return nothing ? Supply.NONE : new Supply(partCode, List.of(), supplier, cost);
    }

    /** The number in a cell that may hold a currency too. */
    static String withoutCurrency(String text) {
        return Blank.strip(CURRENCY.matcher(text).replaceAll(""));
    }

    private @Nullable Double cost(Cell cell) {
        String number = withoutCurrency(cell.text());
        if (number.isEmpty() || NotKnown.says(number)) {
            return null;
        }
        NumberText read = NumberText.read(number, sheet.mark()).found();
        boolean usable = read != null
                && read.unit().isEmpty()
                && read.value().signum() >= 0
                && read.value().compareTo(Limits.LARGEST_COST) <= 0;
        if (read == null || !usable) {
            sheet.notes().notice(cell, cell.quoted() + " is not read as the cost of one piece and is left out.");
            return null;
        }
        return read.value().doubleValue();
    }

    private @Nullable String text(Cell cell, int longest) {
        if (!cell.isFilled()) {
            return null;
        }
        String text = CellText.unprotected(cell.text());
        if (text.length() > longest) {
            sheet.notes()
                    .problem(
                            cell,
                            "The text is " + text.length() + " characters long, at most " + longest + " are kept.");
            return null;
        }
        if (CONTROL.matcher(text).find()) {
            sheet.notes().problem(cell, "The text holds a control character that cannot be shown: type it again.");
            return null;
        }
        return text;
    }
}
