package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.MassBudget.CeilingIs;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.MassUnit;
import dev.ledgerwing.core.quantity.QuantityText;
import dev.ledgerwing.core.quantity.Reading;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.web.desk.Snapshot;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.BindingResult;

/**
 * Reads what was typed for the mass budget, with a sentence at every field that is wrong. A field that still says what the page
 * showed keeps the stored value exactly: looking at grams in ounces must not round them.
 */
final class BudgetEntry {

    private static final double LARGEST_MASS_G = 1_000_000;
    private static final double LARGEST_RESERVE_PERCENT = 90;

    private final BudgetForm form;
    private final BudgetForm shown;
    private final MassBudget stored;
    private final MassUnit unit;
    private final BindingResult problems;

    /** @param seen the revision the form was made from, units those it was shown in */
    BudgetEntry(BudgetForm form, Snapshot seen, UnitSystem units, BindingResult problems) {
        this.form = form;
        this.shown = BudgetForm.of(seen, units);
        this.stored = seen.build().budget();
        this.unit = units.massUnit();
        this.problems = problems;
    }

    /** What is to be set, or nothing once a field is wrong. */
    Optional<BudgetSetting> setting() {
        Stage stage = stage();
        Mass target = mass("target", "A target", form.target(), shown.target(), stored.targetMass());
        Mass ceiling = mass("ceiling", "A ceiling", form.ceiling(), shown.ceiling(), stored.ceilingMass());
        CeilingIs meant = ceiling == null ? null : ceilingIs();
        Double reserve = reserve();
        return stage == null || problems.hasErrors()
                ? Optional.empty()
                : Optional.of(new BudgetSetting(stage, new MassBudget(target, ceiling, meant, reserve)));
    }

    private @Nullable Stage stage() {
        return chosen("stage", form.stage(), Stage.values(), "Please choose a stage.");
    }

    private @Nullable CeilingIs ceilingIs() {
        return chosen(
                "ceilingIs", form.ceilingIs(), CeilingIs.values(), "Please say whether the ceiling itself is allowed.");
    }

    private <E extends Enum<E>> @Nullable E chosen(String field, String typed, E[] values, String sentence) {
        Optional<E> found =
                Arrays.stream(values).filter(each -> each.name().equals(typed)).findFirst();
        if (found.isEmpty()) {
            problems.rejectValue(field, "needed", sentence);
        }
        return found.orElse(null);
    }

    private @Nullable Mass mass(String field, String what, String typed, String shownText, @Nullable Mass storedMass) {
        if (typed.strip().equals(shownText)) {
            return storedMass;
        }
        Mass mass = taken(field, QuantityText.mass(typed, unit));
        if (mass != null && (mass.mg() <= 0 || mass.grams() > LARGEST_MASS_G)) {
            problems.rejectValue(
                    field, "range", what + " is more than 0 g and at most 1000 kg. Leave it empty for none.");
            return null;
        }
        return mass;
    }

    private @Nullable Double reserve() {
        if (form.reserve().strip().equals(shown.reserve())) {
            return stored.reservePercent();
        }
        Double percent = taken("reserve", QuantityText.number(form.reserve()));
        if (percent != null && !(percent >= 0 && percent <= LARGEST_RESERVE_PERCENT)) {
            problems.rejectValue(
                    "reserve", "range", "A reserve is from 0 to 90 %. Leave it empty for the default of the stage.");
            return null;
        }
        return percent;
    }

    private <T> @Nullable T taken(String field, Reading<T> reading) {
        reading.problem().ifPresent(problem -> problems.rejectValue(field, "unread", "This " + problem + "."));
        return reading.found();
    }
}
