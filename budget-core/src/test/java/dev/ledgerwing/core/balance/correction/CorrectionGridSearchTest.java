package dev.ledgerwing.core.balance.correction;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.build.Build;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every millimetre and every gram, from none outward, on seeded airframes: the first that lands when the record is recomputed is what the
 * search finds. To be quick about it, amounts that leave a CG clearly out of its band are passed over by the plain sum of moments.
 */
class CorrectionGridSearchTest {

    /** A change alters the uncertainty of a CG; by less than this share of it and this much, here. */
    private static final double UNCERTAINTY_LEFT = 0.3;

    private static final double MARGIN_MM = 0.5;

    private record Found(String what, Optional<Integer> searched, Optional<Integer> tried) {}

    @Test
    void noMoveAndNoBallastIsMissed() {
        List<Found> found = LongStream.rangeClosed(1, 500)
                .boxed()
                .flatMap(seed -> compared(seed).stream())
                .toList();
        assertThat(found)
                .filteredOn(each -> each.tried.isPresent())
                .as("enough to compare")
                .hasSizeGreaterThan(300);
        assertThat(found).filteredOn(each -> !each.tried.equals(each.searched)).isEmpty();
    }

    private static List<Found> compared(long seed) {
        Build build = SeededTrims.of(seed);
        BalanceStatement statement = BalanceStatement.of(build);
        List<Aim> aims = Aim.of(statement);
        if (aims.stream().allMatch(Aim::isMet)) {
            return List.of();
        }
        Ways ways = new Ways(build, new Effects(statement, aims));
        return Stream.concat(ways.moves().stream(), ways.ballast().stream())
                .map(way -> new Found(
                        "seed " + seed + ", " + way.step(1).key(),
                        searched(new Search(build, aims), way),
                        tried(build, aims, way)))
                .toList();
    }

    private static Optional<Integer> searched(Search search, LinearWay way) {
        return search.least(way).map(trial -> amount(trial.steps().get(0)));
    }

    private static int amount(CorrectionStep step) {
        return step instanceof MovePart move
                ? (int) Math.round(move.by().mm())
                : (int) Math.round(step.cost().grams());
    }

    private static Optional<Integer> tried(Build build, List<Aim> aims, LinearWay way) {
        int most = (int) Math.ceil(
                Math.max(Math.abs(way.allowed().least()), way.allowed().greatest()));
        for (int amount = 1; amount <= most; amount++) {
            for (int signed : new int[] {-amount, amount}) {
                if (way.allowed().contains(signed) && isNear(aims, way, signed) && lands(build, aims, way, signed)) {
                    return Optional.of(signed);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isNear(List<Aim> aims, LinearWay way, int amount) {
        for (int i = 0; i < aims.size(); i++) {
            Aim aim = aims.get(i);
            LinearWay.Effect effect = way.effects().get(i);
            FlightPoint point = aim.point();
            double x = (point.massG() * point.xMm() + effect.momentGMm() * amount)
                    / (point.massG() + effect.massG() * amount);
            double least = UNCERTAINTY_LEFT * (aim.fromMm() - aim.band().forwardXMm()) - MARGIN_MM;
            if (x < aim.band().forwardXMm() + least || x > aim.band().aftXMm() - least) {
                return false;
            }
        }
        return true;
    }

    private static boolean lands(Build build, List<Aim> aims, LinearWay way, int amount) {
        return Trial.of(build, aims, List.of(way.step(amount)))
                .filter(Trial::lands)
                .isPresent();
    }
}
