package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.GrowthTable;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * One line of the ledger, or one extra item of a load case, as the mass budget sees it.
 *
 * @param line id of the line; null for an extra item
 * @param assembly code of its assembly; null for an extra item
 * @param growthPercent the allowance in force: 0 once it was aboard a weigh-in of the whole airframe, the line's own, else the growth
 *     table's
 */
public record MassRow(
        @Nullable String line,
        String name,
        @Nullable String assembly,
        Category category,
        int quantity,
        LineMass mass,
        double growthPercent) {

    /** A steady order that the order in the ledger plays no part in. */
    static final Comparator<MassRow> BY_NAME = Comparator.comparing(MassRow::name)
            .thenComparing(MassRow::line, Comparator.nullsLast(Comparator.naturalOrder()));

    public static MassRow of(PartLine line, GrowthTable table) {
        LineMass mass = line.mass();
        return new MassRow(
                line.id(),
                line.name(),
                line.assembly(),
                line.category(),
                line.quantity(),
                mass,
                growthPercent(mass, line.category(), table));
    }

    /** An extra item grows, and is as uncertain, as {@link Category#PAYLOAD} of its basis: it is carried, not built in. */
    public static MassRow of(ExtraItem item, GrowthTable table) {
        LineMass mass = new LineMass(item.mass(), item.basis(), null, null, null);
        return new MassRow(
                null, item.name(), null, Category.PAYLOAD, 1, mass, growthPercent(mass, Category.PAYLOAD, table));
    }

    /** The same row once the whole airframe has been weighed with it: what it weighs can grow no more. */
    MassRow weighedAboard() {
        return new MassRow(line, name, assembly, category, quantity, mass, 0);
    }

    private static double growthPercent(LineMass mass, Category category, GrowthTable table) {
        Double own = mass.growthPercent();
        return own == null ? table.percent(category, mass.basis()) : own;
    }

    /** Whether it is carried in a load case only, and no part of the build. */
    public boolean isExtra() {
        return line == null;
    }

    public Basis basis() {
        return mass.basis();
    }

    public boolean isKnown() {
        return mass.unitMass() != null;
    }

    /** Quantity times unit mass; null = not known. */
    public @Nullable Mass basic() {
        Mass unit = mass.unitMass();
        return unit == null ? null : unit.times(quantity);
    }

    /** {@link #growthPercent} of the basic mass, rounded to the milligram; null = not known. */
    public @Nullable Mass growth() {
        Mass basic = basic();
        return basic == null ? null : basic.percent(growthPercent);
    }

    /** Basic mass and growth; null = not known. */
    public @Nullable Mass predicted() {
        Mass basic = basic();
        return basic == null ? null : basic.plus(basic.percent(growthPercent));
    }
}
