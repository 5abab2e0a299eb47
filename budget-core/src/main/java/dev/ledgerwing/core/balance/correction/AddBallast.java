package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Adds ballast that stays aboard in every case. It is cut to its mass on the scales, so it does not grow and is off by no more than a
 * step of them; its basis says that nobody has weighed it yet.
 */
public record AddBallast(BallastPlace place, Mass mass) implements CorrectionStep {

    @Override
    public CorrectionKind kind() {
        return CorrectionKind.BALLAST;
    }

    @Override
    public Build on(Build build, Supplier<String> newIds) {
        Mass step = build.judgedBy().massUncertainty().scaleStep();
        LineMass cut = new LineMass(mass, Basis.CALCULATED, null, step, 0.0);
        PartLine line = PartLine.named(newIds.get(), place.assembly(), "Ballast", Category.BALLAST, 1, cut);
        return PartDeeds.added(build, line.withPlace(LinePlace.at(place.station())));
    }

    @Override
    public String sentence(Figures figures) {
        return "Put " + figures.mass(mass) + " of ballast " + place.words() + ", at station "
                + figures.length(place.station().x()) + ".";
    }

    @Override
    public Mass cost() {
        return mass;
    }

    @Override
    public double movementMm() {
        return 0;
    }

    @Override
    public String subject() {
        return place.words();
    }

    @Override
    public @Nullable String line() {
        return null;
    }

    @Override
    public String key() {
        return "ballast." + place.key() + "." + mass.mg();
    }
}
