package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase.Purpose;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
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
                .map(each -> each.purpose() == Purpose.FLIGHT ? each.leavingAtHome(part.id()) : each)
                .toList());
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
