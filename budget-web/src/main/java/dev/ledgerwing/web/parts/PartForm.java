package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.WeighedAs;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.web.support.PlainText;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What was typed for a part. Figures stay the text that was typed until {@link PartEntry} reads them.
 *
 * @param seen the revision the form was made from
 * @param units the units the page showed, whatever the member has switched to since
 * @param assembly code of an assembly; empty with a {@code newAssembly} to be made
 * @param nature whether a change of mass corrects the ledger or changes what is aboard
 */
record PartForm(
        @NotNull @Nullable Integer seen,
        @NotNull @Nullable UnitSystem units,

        @NotBlank(message = "Please name the part.")
        @Size(max = 200, message = "A name has at most {max} characters.")
        @PlainText
        String name,

        String assembly,

        @Size(max = 200, message = "A name has at most {max} characters.") @PlainText
        String newAssembly,

        @NotNull(message = "Please choose a category.") @Nullable
        Category category,

        String quantity,
        String mass,

        @NotNull(message = "Please choose where the mass comes from.") @Nullable
        Basis basis,

        @Nullable WeighedAs weighedAs,
        String uncertainty,
        String growth,
        String x,
        String y,
        String z,
        PlaceForm place,

        @NotNull(message = "Please choose a state.") @Nullable
        FitState state,

        @Size(max = 80, message = "A part code has at most {max} characters.") @PlainText
        String partCode,

        @Size(max = 200, message = "At most {max} characters.") @PlainText
        String supplier,

        String costEach,

        @Size(max = 2000, message = "A note has at most {max} characters.")
        String note,

        @Nullable Nature nature,

        @Size(max = 500, message = "A reason has at most {max} characters.") @PlainText
        String reason) {

    PartForm {
        name = text(name).strip();
        assembly = text(assembly);
        newAssembly = text(newAssembly).strip();
        quantity = text(quantity);
        mass = text(mass);
        uncertainty = text(uncertainty);
        growth = text(growth);
        x = text(x);
        y = text(y);
        z = text(z);
        place = Objects.requireNonNullElse(place, PlaceForm.EMPTY);
        partCode = text(partCode).strip();
        supplier = text(supplier).strip();
        costEach = text(costEach);
        note = text(note).replace("\r\n", "\n");
        reason = text(reason).strip();
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed;
    }

    /** An empty form for a new part of an assembly. */
    static PartForm empty(int seen, String assembly, Figures figures) {
        return new PartForm(
                seen,
                figures.units(),
                "",
                assembly,
                "",
                null,
                "1",
                "",
                Basis.GUESSED,
                null,
                "",
                "",
                "",
                "",
                "",
                PlaceForm.EMPTY,
                FitState.PLANNED,
                "",
                "",
                "",
                "",
                Nature.FITTED,
                "");
    }

    /** The form as it shows a part. */
    static PartForm of(int seen, PartLine line, Figures figures) {
        Station station = line.place().station();
        Function<Function<Station, Length>, String> coordinate =
                axis -> station == null ? "" : figures.exactLength(axis.apply(station));
        return new PartForm(
                seen,
                figures.units(),
                line.name(),
                line.assembly(),
                "",
                line.category(),
                Integer.toString(line.quantity()),
                shown(line.mass().unitMass(), figures),
                line.mass().basis(),
                line.mass().weighedAs(),
                shown(line.mass().uncertainty(), figures),
                shown(line.mass().growthPercent()),
                coordinate.apply(Station::x),
                coordinate.apply(Station::y),
                coordinate.apply(Station::z),
                PlaceForm.of(line.place(), figures),
                line.state(),
                text(line.supply().partCode()),
                text(line.supply().supplier()),
                shown(line.supply().costEach()),
                text(line.note()),
                Nature.FITTED,
                "");
    }

    /** Whether it says which revision and units it was made from; no page of ours sends it otherwise. */
    boolean isWhole() {
        return seen != null && units != null;
    }

    /**
     * What was typed, on top of what others have stored since: a field that was left as {@code base} showed it takes what
     * {@code head} shows.
     */
    PartForm onTopOf(PartForm base, PartForm head) {
        // a mass and its basis are one statement: half of mine and half of theirs would be nobody's
        PartForm stated = saysOfTheMassWhat(base) ? head : this;
        return new PartForm(
                head.seen,
                head.units,
                pick(name, base.name, head.name),
                pick(assembly, base.assembly, head.assembly),
                newAssembly,
                choose(category, base.category, head.category),
                pick(quantity, base.quantity, head.quantity),
                stated.mass,
                stated.basis,
                stated.weighedAs,
                stated.uncertainty,
                stated.growth,
                pick(x, base.x, head.x),
                pick(y, base.y, head.y),
                pick(z, base.z, head.z),
                place.onTopOf(base.place, head.place),
                choose(state, base.state, head.state),
                pick(partCode, base.partCode, head.partCode),
                pick(supplier, base.supplier, head.supplier),
                pick(costEach, base.costEach, head.costEach),
                pick(note, base.note, head.note),
                nature,
                reason);
    }

    private boolean saysOfTheMassWhat(PartForm base) {
        return mass.equals(base.mass)
                && basis == base.basis
                && weighedAs == base.weighedAs
                && uncertainty.equals(base.uncertainty)
                && growth.equals(base.growth);
    }

    static String pick(String typed, String base, String head) {
        return typed.equals(base) ? head : typed;
    }

    private static <T> @Nullable T choose(@Nullable T chosen, @Nullable T base, @Nullable T head) {
        return Objects.equals(chosen, base) ? head : chosen;
    }

    private static String shown(@Nullable Mass mass, Figures figures) {
        return mass == null ? "" : figures.exactMass(mass);
    }

    private static String shown(@Nullable Double value) {
        return value == null ? "" : Figures.number(value, 3);
    }
}
