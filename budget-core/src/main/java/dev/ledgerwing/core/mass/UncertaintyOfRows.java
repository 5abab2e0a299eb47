package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.MassUncertainty;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Standard uncertainty of the sum of rows. Rows of equal category and basis are off together; groups are independent of each
 * other.
 */
final class UncertaintyOfRows {

    /** Rows that share a correlation. */
    private record Kin(Category category, Basis basis) {}

    private final RowUncertainty each;
    private final MassUncertainty rules;
    private final Map<Kin, CorrelatedSum> groups =
            new TreeMap<>(Comparator.comparing(Kin::category).thenComparing(Kin::basis));
    private final double varianceG2;

    UncertaintyOfRows(List<MassRow> rows, MassUncertainty rules) {
        this.rules = rules;
        this.each = new RowUncertainty(rules);
        Map<Kin, List<Double>> uncertainties =
                new TreeMap<>(Comparator.comparing(Kin::category).thenComparing(Kin::basis));
        for (MassRow row : rows) {
            uncertainties
                    .computeIfAbsent(new Kin(row.category(), row.basis()), kin -> new ArrayList<>())
                    .add(each.grams(row));
        }
        uncertainties.forEach((kin, all) -> groups.put(kin, CorrelatedSum.of(rules.correlation(kin.basis()), all)));
        varianceG2 =
                groups.values().stream().mapToDouble(CorrelatedSum::variance).sum();
    }

    /** u of the sum, in grams. */
    double grams() {
        return Math.sqrt(varianceG2);
    }

    /** u of the sum, in grams, once each piece of {@code row} has been weighed by itself. */
    double gramsOnceWeighed(MassRow row) {
        CorrelatedSum now = group(row.category(), row.basis());
        CorrelatedSum weighed = group(row.category(), Basis.WEIGHED);
        double left = now.minus(each.grams(row)).variance() - now.variance();
        double added = weighed.plus(each.gramsOnceWeighed(row)).variance() - weighed.variance();
        return Math.sqrt(Math.max(0, varianceG2 + left + added));
    }

    private CorrelatedSum group(Category category, Basis basis) {
        return groups.getOrDefault(new Kin(category, basis), CorrelatedSum.none(rules.correlation(basis)));
    }
}
