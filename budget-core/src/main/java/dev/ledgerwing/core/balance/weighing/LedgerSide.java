package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What the ledger says of what stood on the scales: the basic mass of its lines, bookings not among it.
 *
 * @param compared the lines that stood on the scales
 * @param notFitted lines that belong aboard and are not fitted yet: not on the scales, not compared
 * @param withoutMass those compared whose mass nobody knows; they count as nothing
 * @param withoutStation those compared with a mass and without a station
 * @param moments null = not every station is known
 * @param joint the same with its covariance: lines of equal category and basis are off together, stations each by itself
 */
public record LedgerSide(
        List<PartLine> compared,
        List<PartLine> notFitted,
        List<PartLine> withoutMass,
        List<PartLine> withoutStation,
        Mass mass,
        @Nullable Moments moments,
        JointMass joint) {

    private static final Comparator<Kin> KIN =
            Comparator.comparing(Kin::category).thenComparing(Kin::basis);

    /** Lines that are off together. */
    private record Kin(Category category, Basis basis) {}

    public LedgerSide {
        compared = List.copyOf(compared);
        notFitted = List.copyOf(notFitted);
        withoutMass = List.copyOf(withoutMass);
        withoutStation = List.copyOf(withoutStation);
    }

    static LedgerSide of(Build build, LoadCase loadCase, List<PartLine> compared, List<PartLine> notFitted) {
        List<PlacedLine> placed = compared.stream()
                .map(line -> PlacedLine.of(line, build, loadCase))
                .toList();
        Mass mass = compared.stream().map(PartLine::totalMass).reduce(Mass.ZERO, Mass::plus);
        Moments moments = moments(placed);
        return new LedgerSide(
                compared,
                notFitted,
                compared.stream().filter(line -> !line.isMassKnown()).toList(),
                placed.stream()
                        .filter(each -> !each.hasMoments())
                        .map(PlacedLine::line)
                        .toList(),
                mass,
                moments,
                joint(mass, moments, errors(placed, build.judgedBy().massUncertainty())));
    }

    private static @Nullable Moments moments(List<PlacedLine> placed) {
        if (!placed.stream().allMatch(PlacedLine::hasMoments)) {
            return null;
        }
        return placed.stream()
                .filter(each -> each.station() != null)
                .map(each -> Moments.of(each.line().totalMass(), Objects.requireNonNull(each.station())))
                .reduce(Moments.ZERO, Moments::plus);
    }

    static JointMass joint(Mass mass, @Nullable Moments moments, List<JointError> errors) {
        Map<Axis, Double> known = new EnumMap<>(Axis.class);
        if (moments != null) {
            for (Axis axis : Axis.values()) {
                known.put(axis, axis.of(moments).gMm());
            }
        }
        return new JointMass(mass.grams(), known, errors);
    }

    /**
     * Of masses with the correlation r between any two of a kind, as independent errors: sqrt(1 - r) v_i each and sqrt(r) sum v_i, whose
     * products add up to JCGM 100:2008, eq. 16.
     */
    private static List<JointError> errors(List<PlacedLine> placed, MassUncertainty rules) {
        Map<Kin, List<PlacedLine>> kin = new TreeMap<>(KIN);
        placed.forEach(each ->
                kin.computeIfAbsent(kin(each.line()), key -> new ArrayList<>()).add(each));
        List<JointError> errors = new ArrayList<>();
        kin.forEach((key, lines) -> {
            double r = rules.correlation(key.basis());
            lines.forEach(each -> errors.add(each.ofMass().times(Math.sqrt(1 - r))));
            errors.add(lines.stream()
                    .map(PlacedLine::ofMass)
                    .reduce(JointError.NONE, JointError::plus)
                    .times(Math.sqrt(r)));
        });
        placed.forEach(each -> {
            errors.add(new JointError(0, each.placeGMm(), 0, 0));
            errors.add(new JointError(0, 0, each.placeGMm(), 0));
            errors.add(new JointError(0, 0, 0, each.placeGMm()));
        });
        return errors;
    }

    private static Kin kin(PartLine line) {
        return new Kin(line.category(), line.mass().basis());
    }
}
