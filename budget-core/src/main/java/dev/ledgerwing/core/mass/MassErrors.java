package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.MassUncertainty;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/**
 * How the errors of the masses of some rows carry over to anything that is worked out from them: u^2 = sum over the groups of equal
 * category and basis of (1 - r) sum (c_i u_i)^2 + r (sum c_i u_i)^2, with c_i the change for each gram of row i, of either
 * sign (JCGM 100:2008, 5.2.2). Where the sensitivities differ in sign, what is off together partly cancels.
 */
public final class MassErrors {

    /** Rows that are off together. */
    private record Kin(Category category, Basis basis) {}

    private final List<Kin> kin = new ArrayList<>();
    private final List<Double> gramsOfEach = new ArrayList<>();
    private final MassUncertainty rules;

    public MassErrors(List<MassRow> rows, MassUncertainty rules) {
        this.rules = rules;
        RowUncertainty each = new RowUncertainty(rules);
        for (MassRow row : rows) {
            kin.add(new Kin(row.category(), row.basis()));
            gramsOfEach.add(each.grams(row));
        }
    }

    /** u^2, with {@code perGram} the sensitivity to the mass of the row of an index. The order of the rows changes no digit. */
    public double variance(IntToDoubleFunction perGram) {
        Map<Kin, List<Double>> groups = new HashMap<>();
        for (int i = 0; i < kin.size(); i++) {
            groups.computeIfAbsent(kin.get(i), key -> new ArrayList<>())
                    .add(perGram.applyAsDouble(i) * gramsOfEach.get(i));
        }
        return groups.entrySet().stream()
                .mapToDouble(group -> CorrelatedSum.of(
                                rules.correlation(group.getKey().basis()), group.getValue())
                        .variance())
                .sorted()
                .sum();
    }
}
