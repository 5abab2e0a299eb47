package dev.ledgerwing.core.build;

import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import java.util.List;

/**
 * A new airframe made after another one. Its pieces are others: none is fitted yet, serial numbers stay with the old one, a
 * weighing of a sister piece counts as calculated, and nothing is booked.
 */
public final class BuildCopy {

    private BuildCopy() {}

    public static Build of(Build pattern, Airframe airframe, MassBudget budget) {
        return new Build(
                airframe,
                budget,
                pattern.judgedBy(),
                pattern.geometry(),
                pattern.assemblies(),
                pattern.lines().stream().map(BuildCopy::another).toList(),
                pattern.loadCases().stream().map(BuildCopy::another).toList(),
                pattern.bays(),
                pattern.keepApart(),
                pattern.phases(),
                pattern.power(),
                pattern.radio(),
                pattern.outputs(),
                List.of(),
                null,
                List.of());
    }

    private static PartLine another(PartLine line) {
        Supply supply = line.supply();
        return new PartLine(
                line.id(),
                line.assembly(),
                line.name(),
                line.category(),
                line.quantity(),
                another(line.mass()),
                line.place(),
                FitState.PLANNED,
                new Supply(supply.partCode(), List.of(), supply.supplier(), supply.costEach()),
                line.note(),
                line.serves(),
                line.electrical(),
                line.needs());
    }

    private static LoadCase another(LoadCase loadCase) {
        return new LoadCase(
                loadCase.code(),
                loadCase.name(),
                loadCase.purpose(),
                loadCase.design(),
                loadCase.absent(),
                loadCase.moved(),
                loadCase.stowed(),
                loadCase.extra().stream()
                        .map(item -> new ExtraItem(
                                item.name(),
                                item.mass(),
                                item.basis() == Basis.WEIGHED ? Basis.CALCULATED : item.basis(),
                                item.station()))
                        .toList());
    }

    private static LineMass another(LineMass mass) {
        return mass.basis() == Basis.WEIGHED
                ? new LineMass(mass.unitMass(), Basis.CALCULATED, null, null, mass.growthPercent())
                : mass;
    }
}
