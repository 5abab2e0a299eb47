package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Assembly.MovesWith;
import dev.ledgerwing.web.support.PlainText;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** What was typed for an assembly. */
record AssemblyForm(
        @NotNull @Nullable Integer seen,

        @NotBlank(message = "Please name the assembly.")
        @Size(max = 200, message = "A name has at most {max} characters.")
        @PlainText
        @Nullable
        String name,

        @NotNull(message = "Please choose what carries it along.") @Nullable
        MovesWith movesWith) {

    AssemblyForm {
        name = name == null ? null : name.strip();
    }

    /** What was typed, on top of what others have stored since. */
    AssemblyForm onTopOf(Assembly base, Assembly head, int number) {
        return new AssemblyForm(
                number,
                base.name().equals(name) ? head.name() : name,
                base.movesWith() == movesWith ? head.movesWith() : movesWith);
    }

    static AssemblyForm of(int seen, Assembly assembly) {
        return new AssemblyForm(seen, assembly.name(), assembly.movesWith());
    }
}
