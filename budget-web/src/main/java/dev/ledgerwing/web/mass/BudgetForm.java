package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.support.PlainText;
import jakarta.validation.constraints.Size;
import java.util.OptionalInt;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What was typed for target, ceiling, reserve and stage; text until {@link BudgetEntry} reads it.
 *
 * @param seen number of the revision the form was made from
 * @param units the units the form was shown in: a number without a unit counts in them, even if the member has switched since
 */
record BudgetForm(
        String seen,
        String units,
        String stage,
        String target,
        String reserve,
        String ceiling,
        String ceilingIs,

        @Size(max = 500, message = "A reason has at most {max} characters.") @PlainText
        String reason) {

    BudgetForm {
        seen = text(seen);
        units = text(units);
        stage = text(stage);
        target = text(target);
        reserve = text(reserve);
        ceiling = text(ceiling);
        ceilingIs = text(ceilingIs);
        reason = text(reason).strip();
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed;
    }

    /** The form as it shows a revision. */
    static BudgetForm of(Snapshot shown, UnitSystem units) {
        Figures figures = new Figures(units);
        MassBudget budget = shown.build().budget();
        MassBudget.CeilingIs meant = budget.ceilingIs();
        Double reserve = budget.reservePercent();
        return new BudgetForm(
                Integer.toString(shown.revision().number()),
                units.name(),
                shown.build().airframe().stage().name(),
                mass(budget.targetMass(), figures),
                reserve == null ? "" : Figures.number(reserve, 2),
                mass(budget.ceilingMass(), figures),
                (meant == null ? MassBudget.CeilingIs.BELOW : meant).name(),
                "");
    }

    private static String mass(@Nullable Mass mass, Figures figures) {
        return mass == null ? "" : figures.smallMass(mass);
    }

    /**
     * The same for a newer revision: what was typed stays, and what was not touched follows the revision, so that sending it
     * again takes nothing of others back.
     */
    BudgetForm onto(Snapshot base, Snapshot head, UnitSystem shownIn) {
        BudgetForm was = of(base, shownIn);
        BudgetForm is = of(head, shownIn);
        return new BudgetForm(
                is.seen,
                is.units,
                followed(was, is, BudgetForm::stage),
                followed(was, is, BudgetForm::target),
                followed(was, is, BudgetForm::reserve),
                followed(was, is, BudgetForm::ceiling),
                followed(was, is, BudgetForm::ceilingIs),
                reason);
    }

    private String followed(BudgetForm was, BudgetForm is, Function<BudgetForm, String> field) {
        String typed = field.apply(this);
        return typed.equals(field.apply(was)) ? field.apply(is) : typed;
    }

    OptionalInt seenNumber() {
        try {
            return OptionalInt.of(Integer.parseInt(seen));
        } catch (NumberFormatException tampered) {
            return OptionalInt.empty();
        }
    }

    UnitSystem unitSystem(UnitSystem unless) {
        return units.equals(UnitSystem.OUNCE_INCH.name())
                ? UnitSystem.OUNCE_INCH
                : units.equals(UnitSystem.GRAM_MILLIMETRE.name()) ? UnitSystem.GRAM_MILLIMETRE : unless;
    }
}
