package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.function.Supplier;

/** Takes ballast out of the airframe and of the record. */
public record TakeOutBallast(PartLine part) implements CorrectionStep {

    @Override
    public CorrectionKind kind() {
        return CorrectionKind.TAKE_OUT_BALLAST;
    }

    @Override
    public Build on(Build build, Supplier<String> newIds) {
        return PartDeeds.removed(build, part.id());
    }

    @Override
    public String sentence(Figures figures) {
        return "Take “" + part.name() + "” out: saves " + figures.mass(part.totalMass()) + ".";
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
        return "out." + part.id();
    }
}
