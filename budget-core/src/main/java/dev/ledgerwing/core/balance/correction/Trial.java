package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What becomes of a record once steps are taken: the balance recomputed from the changed record, by the rules of every other record.
 *
 * @param after with passing ids for the lines added
 * @param aims where each flight case balances then, held against the band it has then and the uncertainty it has then
 * @param keepsPlaces whether no part comes to sit where a bay or a rule forbids it
 */
record Trial(List<CorrectionStep> steps, Build after, List<Aim> aims, boolean keepsPlaces) {

    Trial {
        steps = List.copyOf(steps);
        aims = List.copyOf(aims);
    }

    /**
     * Takes the steps. Empty when the record cannot take them, or when one of the cases that balance {@code now} weighs nothing any more.
     */
    static Optional<Trial> of(Build before, List<Aim> now, List<CorrectionStep> steps) {
        return changed(before, steps)
                .map(after -> new Trial(
                        steps,
                        after,
                        Aim.of(BalanceStatement.of(after)),
                        !PlacementRules.of(after).breaksMoreThan(PlacementRules.of(before))))
                .filter(trial ->
                        now.stream().allMatch(aim -> trial.aim(aim.point()).isPresent()));
    }

    private static Optional<Build> changed(Build before, List<CorrectionStep> steps) {
        try {
            return Optional.of(applied(before, steps, passingIds(before)));
        } catch (IllegalArgumentException refused) {
            return Optional.empty(); // a station or a mass beyond what a record can hold is no correction
        }
    }

    static Build applied(Build before, List<CorrectionStep> steps, Supplier<String> newIds) {
        Build after = before;
        for (CorrectionStep step : steps) {
            after = step.on(after, newIds);
        }
        return after;
    }

    private static Supplier<String> passingIds(Build build) {
        Set<String> taken = build.lines().stream().map(PartLine::id).collect(Collectors.toCollection(HashSet::new));
        return () -> Stream.iterate(1, i -> i + 1)
                .map(i -> "new-" + i)
                .filter(taken::add)
                .findFirst()
                .orElseThrow();
    }

    /** Whether every flight case lies where it is aimed for and every part where it may. */
    boolean lands() {
        return keepsPlaces && !aims.isEmpty() && aims.stream().allMatch(Aim::isMet);
    }

    /** Where a case balances after it. */
    Optional<Aim> aim(FlightPoint point) {
        return aims.stream().filter(each -> each.point().isSameCase(point)).findFirst();
    }
}
