package dev.ledgerwing.web.forms;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The buttons that change the rows of a list while nothing is saved: {@code add:list}, {@code add:list:KIND} for a row of that
 * kind, {@code remove:list:2}, {@code earlier:list:2} and {@code later:list:2}; and {@code look}, which only shows what follows
 * from what was typed.
 */
final class RowButton {

    private static final String NAME = "row";
    private static final String LOOK = "look";
    private static final Pattern ADD = Pattern.compile("add:([\\w.]+)(?::(\\w+))?");
    private static final Pattern OTHER = Pattern.compile("(remove|earlier|later):([\\w.]+):(\\d{1,2})");

    private RowButton() {}

    /** What was typed with the rows as that button wants them; nothing where none was pressed. */
    static Optional<Typed> pressed(Typed typed) {
        if (typed.text(NAME).equals(LOOK)) {
            return Optional.of(typed);
        }
        Matcher add = ADD.matcher(typed.text(NAME));
        if (add.matches()) {
            String list = add.group(1);
            String kind = add.group(2);
            return Optional.of(kind == null ? typed.withRow(list) : typed.withRow(list, "kind", kind));
        }
        Matcher other = OTHER.matcher(typed.text(NAME));
        return other.matches()
                ? Optional.of(changed(typed, other.group(1), other.group(2), Integer.parseInt(other.group(3))))
                : Optional.empty();
    }

    private static Typed changed(Typed typed, String what, String list, int row) {
        return switch (what) {
            case "remove" -> typed.withoutRow(list, row);
            case "earlier" -> typed.withRowsSwapped(list, row - 1);
            default -> typed.withRowsSwapped(list, row);
        };
    }
}
