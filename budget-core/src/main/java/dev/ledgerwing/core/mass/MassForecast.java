package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far the final mass may lie from the predicted one: normal about the predicted mass of the design load case. What no line
 * describes, and what has no mass, is not in it.
 *
 * @param standardUncertaintyG u of the total in grams
 * @param weighNext the rows not weighed yet that are worth it, the one that takes most off the band first
 */
public record MassForecast(MassStatement statement, double standardUncertaintyG, List<WeighNext> weighNext) {

    private static final Comparator<WeighNext> MOST_FIRST = Comparator.comparing(WeighNext::gain)
            .reversed()
            .thenComparing(next -> next.row().name())
            .thenComparing(next -> next.row().line(), Comparator.nullsLast(Comparator.naturalOrder()));

    public MassForecast {
        weighNext = List.copyOf(weighNext);
    }

    public static MassForecast of(Build build) {
        return of(MassStatement.of(build));
    }

    public static MassForecast of(MassStatement statement) {
        MassUncertainty rules = statement.build().judgedBy().massUncertainty();
        UncertaintyOfRows uncertainty = new UncertaintyOfRows(statement.rows(), rules);
        Mass before = halfWidth(uncertainty.grams());
        List<WeighNext> next = statement.rows().stream()
                .filter(row -> row.isKnown() && row.basis() != Basis.WEIGHED)
                .map(row -> new WeighNext(row, before, halfWidth(uncertainty.gramsOnceWeighed(row))))
                .filter(each -> each.gain().mg() > 0)
                .sorted(MOST_FIRST)
                .toList();
        return new MassForecast(statement, uncertainty.grams(), next);
    }

    private static Mass halfWidth(double standardUncertaintyG) {
        return Mass.ofGrams(NormalCurve.HALF_WIDTH_95 * standardUncertaintyG);
    }

    /** u of the total, to the milligram. */
    public Mass standardUncertainty() {
        return Mass.ofGrams(standardUncertaintyG);
    }

    public MassBand band95() {
        return MassBand.around(statement.predicted(), halfWidth(standardUncertaintyG));
    }

    /**
     * Probability, 0 to 1, that the final mass stays within the target: Phi((target - predicted) / u). Null while no target is
     * set, nothing is in the ledger, or a part aboard has no mass.
     */
    public @Nullable Double probabilityWithinTarget() {
        Mass target = statement.build().budget().targetMass();
        if (target == null || statement.rows().isEmpty() || !statement.total().isComplete()) {
            return null;
        }
        double left = target.minus(statement.predicted()).grams();
        if (standardUncertaintyG == 0) {
            return left >= 0 ? 1.0 : 0.0;
        }
        return NormalCurve.atMost(left / standardUncertaintyG);
    }
}
