package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far the final mass may lie from the predicted one: normal about the predicted mass of the design load case. What no line
 * describes, and what has no mass, is not in it. What stood on the scales with the whole airframe errs together as they do.
 *
 * @param standardUncertaintyG u of the total in grams
 * @param halfWidth95 half the width of the 95 per cent band
 * @param weighNext the rows not weighed yet that are worth it, the one that takes most off the band first
 */
public record MassForecast(
        MassStatement statement, double standardUncertaintyG, Mass halfWidth95, List<WeighNext> weighNext) {

    public MassForecast {
        weighNext = List.copyOf(weighNext);
    }

    public static MassForecast of(Build build) {
        return of(MassStatement.of(build));
    }

    public static MassForecast of(MassStatement statement) {
        UncertaintyOfRows uncertainty = UncertaintyOfRows.of(statement, statement.design());
        return new MassForecast(statement, uncertainty.grams(), uncertainty.halfWidth95(), uncertainty.weighNext());
    }

    /** u of the total, to the milligram. */
    public Mass standardUncertainty() {
        return Mass.ofGrams(standardUncertaintyG);
    }

    /** Whether something is aboard and each part of it has a mass; else the final mass is above all this. */
    public boolean isComplete() {
        return !statement.rows().isEmpty() && statement.total().isComplete();
    }

    /** The band about the predicted mass. */
    public MassBand band95() {
        return MassBand.around(statement.predicted(), halfWidth95);
    }

    /**
     * Probability, 0 to 1, that the final mass stays within the target: Phi((target - predicted) / u). Null while no target is
     * set or the forecast is not complete.
     */
    public @Nullable Double probabilityWithinTarget() {
        Mass target = statement.build().budget().targetMass();
        if (target == null || !isComplete()) {
            return null;
        }
        double left = target.minus(statement.predicted()).grams();
        if (standardUncertaintyG == 0) {
            return left >= 0 ? 1.0 : 0.0;
        }
        return NormalCurve.atMost(left / standardUncertaintyG);
    }
}
