package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Standard uncertainty of what a load case weighs. Rows of equal category and basis are off together; groups are independent of
 * each other.
 *
 * <p>Once the whole airframe has been weighed, the case weighs what the scales said, less what stood on them and stays at home, plus
 * what is aboard and did not stand on them: u^2 = u^2(scales) + u^2(sum over the rows of those two kinds, the former with minus).
 */
final class UncertaintyOfRows {

    private static final Comparator<WeighNext> MOST_FIRST =
            Comparator.comparing(WeighNext::gain).reversed().thenComparing(WeighNext::row, MassRow.BY_NAME);
    private static final Comparator<Kin> KIN =
            Comparator.comparing(Kin::category).thenComparing(Kin::basis);

    /** Rows that share a correlation. */
    private record Kin(Category category, Basis basis) {}

    private final List<MassRow> apart;
    private final RowUncertainty each;
    private final MassUncertainty rules;
    private final Map<Kin, CorrelatedSum> groups = new TreeMap<>(KIN);
    private final double varianceG2;

    static UncertaintyOfRows of(MassStatement statement, CaseMass aboard) {
        MassUncertainty rules = statement.build().judgedBy().massUncertainty();
        Set<String> absent = new HashSet<>(aboard.loadCase().absent());
        return WholeWeighing.of(statement.build())
                .map(weighing -> new UncertaintyOfRows(
                        without(aboard.rows(), weighing),
                        statement.ledger().stream()
                                .filter(row -> isOnScales(row, weighing) && absent.contains(row.line()))
                                .toList(),
                        weighing.standardUncertaintyG(),
                        rules))
                .orElseGet(() -> new UncertaintyOfRows(aboard.rows(), List.of(), 0, rules));
    }

    private static List<MassRow> without(List<MassRow> rows, WholeWeighing weighing) {
        return rows.stream().filter(row -> !isOnScales(row, weighing)).toList();
    }

    private static boolean isOnScales(MassRow row, WholeWeighing weighing) {
        String line = row.line();
        return line != null && weighing.lines().contains(line);
    }

    /**
     * @param apart rows that are aboard and were not weighed together
     * @param takenOff rows that were weighed together with the others and are not aboard
     * @param togetherG u of what was weighed together, in grams
     */
    private UncertaintyOfRows(List<MassRow> apart, List<MassRow> takenOff, double togetherG, MassUncertainty rules) {
        this.apart = List.copyOf(apart);
        this.rules = rules;
        this.each = new RowUncertainty(rules);
        Map<Kin, List<Double>> uncertainties = new TreeMap<>(KIN);
        apart.forEach(row -> signed(uncertainties, row).add(each.grams(row)));
        takenOff.forEach(row -> signed(uncertainties, row).add(-each.grams(row)));
        uncertainties.forEach((kin, all) -> groups.put(kin, CorrelatedSum.of(rules.correlation(kin.basis()), all)));
        varianceG2 = togetherG * togetherG
                + groups.values().stream().mapToDouble(CorrelatedSum::variance).sum();
    }

    private static List<Double> signed(Map<Kin, List<Double>> uncertainties, MassRow row) {
        return uncertainties.computeIfAbsent(new Kin(row.category(), row.basis()), kin -> new ArrayList<>());
    }

    /** u of the sum, in grams. */
    double grams() {
        return Math.sqrt(varianceG2);
    }

    /** Half the width of the 95 per cent band. */
    Mass halfWidth95() {
        return halfWidth95(grams());
    }

    /** The rows not weighed yet, by themselves or with the whole airframe, that are worth it, the one that takes most off the band first. */
    List<WeighNext> weighNext() {
        return apart.stream()
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
