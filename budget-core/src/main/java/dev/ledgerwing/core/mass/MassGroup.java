package dev.ledgerwing.core.mass;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rows of one assembly or of one category, and their subtotal.
 *
 * @param code code of the assembly or of the category; null for the extra items of the load case
 */
public record MassGroup(@Nullable String code, String title, List<MassRow> rows, MassTotal total) {

    public MassGroup {
        rows = List.copyOf(rows);
    }

    static MassGroup of(@Nullable String code, String title, List<MassRow> rows) {
        return new MassGroup(code, title, rows, MassTotal.of(rows));
    }
}
