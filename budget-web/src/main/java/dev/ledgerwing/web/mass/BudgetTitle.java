package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Says in one line what was set: {@code Target 6800 → 7000 g}. Always in grams, since everybody reads the same history. */
final class BudgetTitle {

    private final BudgetSetting before;
    private final BudgetSetting after;
    private final List<String> parts = new ArrayList<>();

    private BudgetTitle(BudgetSetting before, BudgetSetting after) {
        this.before = before;
        this.after = after;
    }

    static String of(BudgetSetting before, BudgetSetting after) {
        BudgetTitle title = new BudgetTitle(before, after);
        title.target();
        title.ceiling();
        title.reserve();
        title.stage();
        String text = String.join(", ", title.parts);
        return text.isEmpty() ? "Mass budget as before" : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private void target() {
        Mass was = before.budget().targetMass();
        Mass is = after.budget().targetMass();
        if (!Objects.equals(was, is)) {
            parts.add("target " + target(was, is));
        }
    }

    /** {@code 6800 → 7000 g}: the unit once where both have the same. */
    private static String target(@Nullable Mass was, @Nullable Mass is) {
        if (was == null || is == null) {
            return fromTo(was == null ? null : mass(was), is == null ? null : mass(is));
        }
        boolean sameUnit = unit(was).equals(unit(is));
        return fromTo(sameUnit ? Figures.METRIC.massNumber(was) : mass(was), mass(is));
    }

    private static String unit(Mass mass) {
        return mass(mass).substring(Figures.METRIC.massNumber(mass).length());
    }

    private void ceiling() {
        String was = ceiling(before.budget());
        String is = ceiling(after.budget());
        if (!Objects.equals(before.budget().ceilingMass(), after.budget().ceilingMass())
                || before.budget().ceilingIs() != after.budget().ceilingIs()) {
            parts.add("ceiling " + fromTo(was, is));
        }
    }

    private static @Nullable String ceiling(MassBudget budget) {
        Mass ceiling = budget.ceilingMass();
        MassBudget.CeilingIs meant = budget.ceilingIs();
        return ceiling == null || meant == null ? null : meant.words() + " " + mass(ceiling);
    }

    private void reserve() {
        Double was = before.budget().reservePercent();
        Double is = after.budget().reservePercent();
        if (!Objects.equals(was, is)) {
            parts.add("reserve " + reserve(was) + " → " + reserve(is));
        }
    }

    private static String reserve(@Nullable Double percent) {
        return percent == null ? "by stage" : Figures.number(percent, 2) + "\u2009%";
    }

    private void stage() {
        if (before.stage() != after.stage()) {
            parts.add("stage " + before.stage().title() + " → " + after.stage().title());
        }
    }

    private static String fromTo(@Nullable String was, @Nullable String is) {
        if (is == null) {
            return was + " taken away";
        }
        return was == null ? "set to " + is : was + " → " + is;
    }

    private static String mass(Mass mass) {
        return Figures.METRIC.mass(mass);
    }
}
