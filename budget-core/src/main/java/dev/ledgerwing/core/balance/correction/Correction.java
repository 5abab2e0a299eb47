package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One thing, or two together, that lands every flight case in its band. It was recomputed from the changed record before it was
 * offered.
 *
 * @param steps one, or two to be done together
 * @param after the record after it, with passing ids for the lines it adds: to look at, not to keep
 * @param cases where each flight case balances after it, at basic and at predicted mass
 */
public record Correction(List<CorrectionStep> steps, Build after, List<Aim> cases) {

    /**
     * The grams added first, where saving counts as adding none; then the least work; then what saves most, moves least, and the name.
     */
    static final Comparator<Correction> CHEAPEST_FIRST = Comparator.comparingLong(Correction::addedMg)
            .thenComparing(Correction::kind)
            .thenComparing(Correction::cost)
            .thenComparingDouble(Correction::movementMm)
            .thenComparing(Correction::subject)
            .thenComparing(Correction::key);

    public Correction {
        steps = List.copyOf(steps);
        cases = List.copyOf(cases);
    }

    static Correction of(Trial trial) {
        return new Correction(trial.steps(), trial.after(), trial.aims());
    }

    public CorrectionKind kind() {
        return steps.size() > 1 ? CorrectionKind.PAIR : steps.get(0).kind();
    }

    /**
     * The record with it done: what applying it lands.
     *
     * @param newIds ids for the lines it adds, none of them taken
     */
    public Build on(Build build, Supplier<String> newIds) {
        return Trial.applied(build, steps, newIds);
    }

    /** The balance after it, to draw and to read in per cent of the chord it has then; worked out anew at each call. */
    public BalanceStatement balance() {
        return BalanceStatement.of(after);
    }

    /** What to do, in one plain sentence for each step, in the reader's units. */
    public String sentence(Figures figures) {
        return steps.stream().map(step -> step.sentence(figures)).collect(Collectors.joining(" "));
    }

    /** What it adds to the ledger; negative saves. */
    public Mass cost() {
        return steps.stream().map(CorrectionStep::cost).reduce(Mass.ZERO, Mass::plus);
    }

    /** What has to be declared or looked at again after it, in sentences. */
    public List<String> declareAgain() {
        return steps.stream().flatMap(step -> step.declareAgain().stream()).toList();
    }

    /** Where a case balances after it; null where it then weighs nothing. */
    public @Nullable Aim after(FlightPoint point) {
        return cases.stream()
                .filter(each -> each.point().isSameCase(point))
                .findFirst()
                .orElse(null);
    }

    /** The line it changes, where it changes one. */
    public @Nullable String line() {
        return steps.size() > 1 ? null : steps.get(0).line();
    }

    /** Short, and the same for the same correction of the same record: what a form sends back. */
    public String key() {
        return steps.stream().map(CorrectionStep::key).collect(Collectors.joining("+"));
    }

    private long addedMg() {
        return Math.max(0, cost().mg());
    }

    private double movementMm() {
        return steps.stream().mapToDouble(CorrectionStep::movementMm).sum();
    }

    private String subject() {
        return steps.get(0).subject();
    }
}
