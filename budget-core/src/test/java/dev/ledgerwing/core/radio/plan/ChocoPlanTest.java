package dev.ledgerwing.core.radio.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * The planner beside a general constraint solver, on radios at random: functions of two and three states, every decoder, every
 * behaviour on the loss of the signal, pins, mixes, and switches of two, three and six positions.
 */
class ChocoPlanTest {

    private static final int CASES = 500;

    @Test
    void aConstraintSolverFindsTheSameOptimumOn500SeededRadios() {
        Map<Long, @Nullable Integer> planned = new TreeMap<>();
        Map<Long, @Nullable Integer> solved = new TreeMap<>();
        for (long seed = 1; seed <= CASES; seed++) {
            PlanAnswer answer = ChannelPlanner.plan(RandomRadio.of(seed));
            Integer cost = answer.sharedWeight() * 100 + answer.channels().size();
            planned.put(seed, answer.fits() ? cost : null);
            solved.put(seed, ChocoPlan.optimum(RandomRadio.of(seed)));
        }
        assertThat(planned).isEqualTo(solved);
    }

    @Test
    void theSeededRadiosAreOfEveryKind() {
        Map<String, Integer> kinds = new TreeMap<>();
        for (long seed = 1; seed <= CASES; seed++) {
            PlanAnswer answer = ChannelPlanner.plan(RandomRadio.of(seed));
            String shares = answer.sharedPairs() > 0 ? " by sharing" : "";
            kinds.merge(answer.outcome() + shares, 1, Integer::sum);
        }
        assertThat(kinds.get("FITS")).isGreaterThan(50);
        assertThat(kinds.get("FITS by sharing")).isGreaterThan(50);
        assertThat(kinds.get("DOES_NOT_FIT")).isGreaterThan(50);
    }
}
