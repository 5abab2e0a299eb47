package dev.ledgerwing.web.fleet;

import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.web.support.PlainText;
import dev.ledgerwing.web.support.Slug;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * What was typed for a new airframe.
 *
 * @param code empty = made from the name
 * @param pattern code of the airframe to copy; empty = start blank
 */
record NewAirframeForm(
        @NotBlank(message = "Please name the airframe.")
        @Size(max = 200, message = "A name has at most {max} characters.")
        @PlainText
        @Nullable
        String name,

        @Pattern(
                regexp = "|[a-z0-9][a-z0-9-]{0,39}",
                message = "A code has 1 to 40 lower-case letters, digits and hyphens.")
        @Nullable
        String code,

        @NotNull(message = "Please choose a stage.") @Nullable
        Stage stage,

        @Size(max = 60, message = "A target is a mass such as 6800 g.") @Nullable
        String target,

        @Size(max = 200, message = "At most {max} characters.") @PlainText @Nullable
        String datum,

        @Nullable String pattern) {

    NewAirframeForm {
        name = name == null ? "" : name.strip();
        code = code == null ? "" : code.strip();
        target = target == null ? "" : target;
        datum = datum == null ? "" : datum.strip();
        pattern = pattern == null ? "" : pattern;
    }

    static NewAirframeForm empty() {
        return new NewAirframeForm("", "", Stage.CONCEPT, "", "", "");
    }

    /** The code as typed, or one made from the name. */
    String codeOrMade() {
        if (code != null && !code.isEmpty()) {
            return code;
        }
        return Slug.of(String.valueOf(name), 40);
    }
}
