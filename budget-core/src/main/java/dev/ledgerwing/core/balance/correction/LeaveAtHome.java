package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Leaves a payload at home in every flight case. It stays in the ledger. */
public record LeaveAtHome(PartLine part) implements CorrectionStep {

    @Override
    public CorrectionKind kind() {
        return CorrectionKind.LEAVE_OUT;
    }

    @Override
    public Build on(Build build, Supplier<String> newIds) {
        return build.withLoadCases(build.loadCases().stream()
                .map(each -> each.purpose() == Purpose.FLIGHT ? without(each) : each)
                .toList());
    }

    private LoadCase without(LoadCase loadCase) {
        List<String> absent = new ArrayList<>(loadCase.absent());
        if (!absent.contains(part.id())) {
            absent.add(part.id());
        }
        Map<String, Station> moved = new TreeMap<>(loadCase.moved());
        moved.remove(part.id());
        return new LoadCase(
                loadCase.code(),
                loadCase.name(),
                loadCase.purpose(),
                loadCase.design(),
                absent,
                moved,
                loadCase.stowed().stream().filter(id -> !id.equals(part.id())).toList(),
                loadCase.extra());
    }

    @Override
    public String sentence(Figures figures) {
        return "Leave “" + part.name() + "” (" + figures.mass(part.totalMass()) + ") at home on every flight.";
    }

    @Override
    public Mass cost() {
        return Mass.ZERO.minus(part.totalMass());
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
        return "home." + part.id();
    }
}
