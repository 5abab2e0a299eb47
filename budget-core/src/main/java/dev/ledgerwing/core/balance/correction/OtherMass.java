package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Supply;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.function.Supplier;

/**
 * Swaps a part for one of another mass, made or found to it. The new one is planned, nobody has weighed it, and it has neither a part
 * code nor serial numbers.
 *
 * @param part as it is now
 * @param byEach what each piece has to be heavier; negative is lighter
 */
public record OtherMass(PartLine part, Mass byEach) implements CorrectionStep {

    @Override
    public CorrectionKind kind() {
        return CorrectionKind.OTHER_MASS;
    }

    @Override
    public Build on(Build build, Supplier<String> newIds) {
        return PartDeeds.changed(build, swapped(part), Nature.FITTED);
    }

    private PartLine swapped(PartLine now) {
        Supply supply = now.supply();
        return new PartLine(
                now.id(),
                now.assembly(),
                now.name(),
                now.category(),
                now.quantity(),
                mass(now.mass()),
                now.place(),
                FitState.PLANNED,
                new Supply(null, List.of(), supply.supplier(), supply.costEach()),
                now.note(),
                now.serves(),
                now.electrical(),
                now.needs());
    }

    /** What was weighed is not this part: it is made to a mass, which it keeps. */
    private LineMass mass(LineMass was) {
        Mass unit = was.unitMass();
        Mass wanted = unit == null ? byEach : unit.plus(byEach);
        return was.basis() == Basis.WEIGHED
                ? new LineMass(wanted, Basis.CALCULATED, null, was.uncertainty(), growth(was))
                : new LineMass(wanted, was.basis(), null, was.uncertainty(), was.growthPercent());
    }

    private static double growth(LineMass was) {
        Double own = was.growthPercent();
        return own == null ? 0 : own;
    }

    @Override
    public String sentence(Figures figures) {
        Mass size = byEach.isNegative() ? Mass.ZERO.minus(byEach) : byEach;
        return "Make or find “" + part.name() + "” " + figures.mass(size)
                + (byEach.isNegative() ? " lighter" : " heavier")
                + (part.quantity() > 1 ? " each" : "") + ", "
                + Figures.percent(
                        100.0 * size.mg() * part.quantity() / part.totalMass().mg()) + " of its mass.";
    }

    @Override
    public Mass cost() {
        return byEach.times(part.quantity());
    }

    @Override
    public double movementMm() {
        return 0;
    }

    @Override
    public String subject() {
        return part.name();
    }

    @Override
    public String line() {
        return part.id();
    }

    @Override
    public String key() {
        return "mass." + part.id() + "." + byEach.mg();
    }
}
