package dev.ledgerwing.web.tables;

import dev.ledgerwing.web.support.PlainText;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What was chosen below a table.
 *
 * @param seen the revision that its effect was told against
 * @param columns the choices for columns that the page was made with
 * @param meanings name of the {@link dev.ledgerwing.core.file.table.Meaning} of each column, from the first on; {@code units} likewise, empty = none
 * @param looseAssembly name of the assembly for parts that give none
 */
record ImportForm(
        @NotNull(message = "The page was incomplete. Please load it again.") @Nullable
        Integer seen,

        String columns,
        List<String> meanings,
        List<String> units,
        Placing placing,

        @NotBlank(message = "Please name the assembly for these parts.")
        @Size(max = 200, message = "A name has at most {max} characters.")
        @PlainText
        String looseAssembly,

        @Size(max = 300, message = "A reason has at most {max} characters.") @PlainText
        String reason) {

    static final String LOOSE = "Parts";

    ImportForm {
        columns = Objects.requireNonNullElse(columns, "");
        meanings = Objects.requireNonNullElse(meanings, List.of());
        units = Objects.requireNonNullElse(units, List.of());
        placing = Objects.requireNonNullElse(placing, Placing.APPEND);
        looseAssembly = Objects.requireNonNullElse(looseAssembly, LOOSE).strip();
        reason = Objects.requireNonNullElse(reason, "").strip();
    }

    /** The revision seen; a form without one never gets past its checks. */
    int seenOrFirst() {
        return seen == null ? 1 : seen;
    }

    static ImportForm empty() {
        return new ImportForm(null, "", List.of(), List.of(), Placing.APPEND, LOOSE, "");
    }
}
