package dev.ledgerwing.core.radio.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.radio.plan.ChannelPlanner;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import dev.ledgerwing.core.radio.plan.PlanAnswer;
import java.util.HashSet;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class ExplanationInvariantsTest {

    private static final int SEEDS = 400;

    @Test
    void theCausesAloneDoNotFitAndWithoutAnyOfThemTheyDo() {
        int explained = 0;
        for (long seed : seeds()) {
            ChannelProblem problem = SeededSqueezes.of(seed);
            Explanation explanation = Explanation.of(problem);
            boolean doesNotFit = ChannelPlanner.plan(problem).outcome() == PlanAnswer.Outcome.DOES_NOT_FIT;

            assertThat(!explanation.reasons().isEmpty()).as("seed %s", seed).isEqualTo(doesNotFit);
            if (doesNotFit) {
                explained++;
                assertThat(ChannelPlanner.fits(explanation.core()))
                        .as("seed %s alone", seed)
                        .isFalse();
                assertThat(explanation.causes())
                        .as("seed %s, each needed", seed)
                        .allMatch(cause -> ChannelPlanner.fits(explanation.coreWithout(cause)));
            }
        }
        assertThat(explained).isGreaterThan(SEEDS / 5);
    }

    @Test
    void theReasonsTellEverythingThatIsLeftAndNothingElse() {
        for (long seed : seeds()) {
            Explanation explanation = Explanation.of(SeededSqueezes.of(seed));
            if (!explanation.reasons().isEmpty()) {
                List<Cause> left = Causes.of(explanation.core());

                assertThat(explanation.causes()).as("seed %s", seed).doesNotHaveDuplicates();
                assertThat(new HashSet<>(explanation.causes()))
                        .as("seed %s", seed)
                        .isEqualTo(new HashSet<>(left));
            }
        }
    }

    @Test
    void theSameProblemIsExplainedTheSameWay() {
        for (long seed : seeds()) {
            assertThat(Explanation.of(SeededSqueezes.of(seed)))
                    .as("seed %s", seed)
                    .isEqualTo(Explanation.of(SeededSqueezes.of(seed)));
        }
    }

    @Test
    void otherNamesAndCodesChangeNothingButNames() {
        for (long seed : seeds()) {
            ChannelProblem problem = SeededSqueezes.of(seed);
            Renaming renaming = new Renaming(problem);
            List<String> renamed = Explanation.of(renaming.problem()).reasons().stream()
                    .map(reason -> renaming.back(reason.sentence()))
                    .toList();

            assertThat(renamed)
                    .as("seed %s", seed)
                    .isEqualTo(Explanation.of(problem).reasons().stream()
                            .map(Reason::sentence)
                            .toList());
        }
    }

    private static List<Long> seeds() {
        return LongStream.rangeClosed(1, SEEDS).boxed().toList();
    }
}
