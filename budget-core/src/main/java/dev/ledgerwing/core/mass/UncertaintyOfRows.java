package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.quantity.Mass;
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

    private static final Comparator<WeighNext> MOST_FIRST =
            Comparator.comparing(WeighNext::gain).reversed().thenComparing(WeighNext::row, MassRow.BY_NAME);
    private static final Comparator<Kin> KIN =
            Comparator.comparing(Kin::category).thenComparing(Kin::basis);

    /** Rows that share a correlation. */
    private record Kin(Category category, Basis basis) {}

    private final List<MassRow> rows;
    private final RowUncertainty each;
    private final MassUncertainty rules;
    private final Map<Kin, CorrelatedSum> groups = new TreeMap<>(KIN);
    private final double varianceG2;

    UncertaintyOfRows(List<MassRow> rows, MassUncertainty rules) {
        this.rows = List.copyOf(rows);
        this.rules = rules;
        this.each = new RowUncertainty(rules);
        Map<Kin, List<Double>> uncertainties = new TreeMap<>(KIN);
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

    /** Half the width of the 95 per cent band. */
    Mass halfWidth95() {
        return halfWidth95(grams());
    }

    /** The rows not weighed yet that are worth it, the one that takes most off the band first. */
    List<WeighNext> weighNext() {
        return rows.stream()
                .filter(row -> row.isKnown() && row.basis() != Basis.WEIGHED)
                .map(row -> new WeighNext(row, halfWidth95(), halfWidth95(gramsOnceWeighed(row))))
                .filter(next -> next.gain().mg() > 0)
                .sorted(MOST_FIRST)
                .toList();
    }

    private static Mass halfWidth95(double standardUncertaintyG) {
        return Mass.ofGrams(NormalCurve.HALF_WIDTH_95 * standardUncertaintyG);
    }

    /** u of the sum, in grams, once each piece of {@code row} has been weighed by itself. */
    private double gramsOnceWeighed(MassRow row) {
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
