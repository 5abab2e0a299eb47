package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Supply;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.QuantityText;
import dev.ledgerwing.core.quantity.Reading;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.BindingResult;

/**
 * Reads what was typed for a part, with a sentence at every field that is wrong. A field that still says what the page showed
 * keeps the stored value exactly: looking at grams in ounces must not round them.
 */
final class PartEntry {

    private static final double LARGEST_MASS_G = 1_000_000;
    private static final double LARGEST_LENGTH_MM = 100_000;

    private final PartForm form;
    private final @Nullable PartLine before;
    private final @Nullable PartForm shown;
    private final Figures figures;
    private final BindingResult problems;

    /** @param before the part as it was; null for a new one */
    PartEntry(PartForm form, @Nullable PartLine before, Figures figures, BindingResult problems) {
        this.form = form;
        this.before = before;
        this.shown = before == null ? null : PartForm.of(0, before, figures);
        this.figures = figures;
        this.problems = problems;
    }

    /** The part as typed, or nothing once a field is wrong. */
    Optional<PartLine> line(String id, String assembly, Build build) {
        checkAssembly(build);
        checkNote();
        int quantity = quantity();
        LineMass mass = mass();
        LinePlace place = place(quantity);
        Double costEach = number(
                "costEach",
                form.costEach(),
                1e9,
                before == null ? null : before.supply().costEach());
        if (problems.hasErrors() || form.category() == null || form.state() == null) {
            return Optional.empty();
        }
        return Optional.of(new PartLine(
                id,
                assembly,
                form.name(),
                form.category(),
                quantity,
                mass,
                place,
                form.state(),
                supply(costEach),
                orNull(form.note()),
                before == null ? List.of() : before.serves(),
                before == null ? List.of() : before.electrical(),
                before == null ? PortNeeds.NONE : before.needs()));
    }

    private void checkNote() {
        if (form.note().chars().anyMatch(each -> Character.isISOControl(each) && each != '\n' && each != '\t')) {
            problems.rejectValue("note", "unseen", "Please leave out control characters.");
        }
    }

    private void checkAssembly(Build build) {
        if (form.newAssembly().isEmpty() && build.assembly(form.assembly()).isEmpty()) {
            problems.rejectValue("assembly", "needed", "Please choose an assembly, or name a new one.");
        }
    }

    private int quantity() {
        int quantity = 0;
        try {
            quantity = Integer.parseInt(form.quantity().strip());
        } catch (NumberFormatException notWhole) {
            // falls out of the range below
        }
        if (quantity < 1 || quantity > 100_000) {
            problems.rejectValue("quantity", "range", "A quantity is a whole number from 1 to 100 000.");
            return 1;
        }
        return quantity;
    }

    private LineMass mass() {
        Mass unitMass = mass(
                "mass",
                form.mass(),
                shown == null ? null : shown.mass(),
                before == null ? null : before.mass().unitMass());
        Mass uncertainty = mass(
                "uncertainty",
                form.uncertainty(),
                shown == null ? null : shown.uncertainty(),
                before == null ? null : before.mass().uncertainty());
        Double growth = number(
                "growth",
                form.growth(),
                500,
                before == null ? null : before.mass().growthPercent());
        Basis basis = Objects.requireNonNullElse(form.basis(), Basis.GUESSED);
        if (basis == Basis.WEIGHED && unitMass == null && !problems.hasFieldErrors("mass")) {
            problems.rejectValue("mass", "needed", "Please give the mass that was weighed.");
        }
        return problems.hasErrors()
                ? LineMass.notKnown()
                : new LineMass(unitMass, basis, basis == Basis.WEIGHED ? form.weighedAs() : null, uncertainty, growth);
    }

    private @Nullable Mass mass(String field, String typed, @Nullable String shownText, @Nullable Mass stored) {
        if (typed.equals(shownText)) {
            return stored;
        }
        Mass mass = taken(field, QuantityText.mass(typed, figures.units().massUnit()));
        if (mass != null && (mass.isNegative() || mass.grams() > LARGEST_MASS_G)) {
            problems.rejectValue(
                    field, "range", "A mass is from 0 g to 1000 kg. Leave it empty while it is not known.");
            return null;
        }
        return mass;
    }

    private LinePlace place(int quantity) {
        LinePlace old = before == null ? LinePlace.UNKNOWN : before.place();
        Length x = coordinate("x", form.x(), shown == null ? null : shown.x(), old, 0);
        Length y = coordinate("y", form.y(), shown == null ? null : shown.y(), old, 1);
        Length z = coordinate("z", form.z(), shown == null ? null : shown.z(), old, 2);
        Station station = x == null && y == null && z == null ? null : new Station(orZero(x), orZero(y), orZero(z));
        if (station != null && x == null && !problems.hasFieldErrors("x")) {
            problems.rejectValue("x", "needed", "Please give how far aft of the datum it sits, too.");
        }
        return new PlaceEntry(form.place(), old, figures, problems).at(station, quantity);
    }

    private @Nullable Length coordinate(
            String field, String typed, @Nullable String shownText, LinePlace old, int axis) {
        Station station = old.station();
        if (typed.equals(shownText)) {
            return station == null
                    ? null
                    : List.of(station.x(), station.y(), station.z()).get(axis);
        }
        Length length = taken(field, QuantityText.length(typed, figures.units().lengthUnit()));
        if (length != null && Math.abs(length.mm()) > LARGEST_LENGTH_MM) {
            problems.rejectValue(field, "range", "A station is at most 100 m from the datum, either way.");
            return null;
        }
        return length;
    }

    private static Length orZero(@Nullable Length length) {
        return length == null ? Length.ZERO : length;
    }

    private Supply supply(@Nullable Double costEach) {
        List<String> serials = before == null ? List.of() : before.supply().serials();
        return new Supply(orNull(form.partCode()), serials, orNull(form.supplier()), costEach);
    }

    private static @Nullable String orNull(String typed) {
        return typed.isBlank() ? null : typed;
    }

    private @Nullable Double number(String field, String typed, double most, @Nullable Double stored) {
        if (stored != null && typed.equals(Figures.number(stored, 3))) {
            return stored;
        }
        Double number = taken(field, QuantityText.number(typed));
        if (number != null && (number < 0 || number > most)) {
            problems.rejectValue(field, "range", "This is a number from 0 to " + Figures.number(most, 0) + ".");
            return null;
        }
        return number;
    }

    private <T> @Nullable T taken(String field, Reading<T> reading) {
        reading.problem().ifPresent(problem -> problems.rejectValue(field, "unread", "This " + problem + "."));
        return reading.found();
    }
}
