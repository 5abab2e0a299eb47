package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.JudgedBy;
import dev.ledgerwing.core.build.WeighIn;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The newest weigh-in of the whole airframe. What stood on the scales then and is still the same weighs together what they said: it
 * grows no more, and errs together as the scales do instead of line by line.
 *
 * @param lines ids of the lines that stood on the scales and are the same parts still
 * @param standardUncertaintyG u of what the scales said of them together, in grams
 */
public record WholeWeighing(WeighIn weighIn, Set<String> lines, double standardUncertaintyG) {

    public WholeWeighing {
        lines = Set.copyOf(lines);
    }

    /** The newest by date; of two on one day the later in the record. Empty as well once every part is another one. */
    public static Optional<WholeWeighing> of(Build build) {
        return build.weighIns().stream()
                .filter(WeighIn::isWhole)
                .reduce((one, next) -> next.date().isBefore(one.date()) ? one : next)
                .filter(weighIn -> !weighIn.aboard().isEmpty())
                .map(weighIn -> new WholeWeighing(
                        weighIn, new HashSet<>(weighIn.aboard()), standardUncertaintyG(weighIn, build.judgedBy())));
    }

    /** u^2 = sum of u^2 of each net reading, and of what was taken out because it does not belong to the airframe. */
    private static double standardUncertaintyG(WeighIn weighIn, JudgedBy rules) {
        ScaleError scale =
                new ScaleError(weighIn.scale().step(), weighIn.scale().maxError());
        RowUncertainty each = new RowUncertainty(rules.massUncertainty());
        double readings = weighIn.supports().stream()
                .mapToDouble(support -> scale.ofWeighingG(support.tare().mg() > 0))
                .map(u -> u * u)
                .sum();
        double extra = weighIn.extra().stream()
                .mapToDouble(item -> each.grams(MassRow.of(item, rules.growth())))
                .map(u -> u * u)
                .sum();
        return Math.sqrt(readings + extra);
    }
}
