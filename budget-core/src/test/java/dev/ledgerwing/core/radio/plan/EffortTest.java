package dev.ledgerwing.core.radio.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.plan.PlanAnswer.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is too hard is not known, and neither fits nor does not fit. */
class EffortTest {

    /** The fourth Mycielski graph after one edge, with 47 vertices: six colours by construction, which is hard to prove. */
    private static final Graph HARD = Graph.mycielski(4);

    @Test
    void aPlanThatCannotBeSearchedThroughIsNotKnown() {
        ChannelProblem fiveChannels = withChannels(HARD.asFunctions(), 5);
        PlanAnswer answer = ChannelPlanner.plan(fiveChannels);
        assertThat(answer.outcome()).isEqualTo(Outcome.NOT_KNOWN);
        assertThat(answer.channels()).isEmpty();
        assertThat(answer.missing())
                .containsExactly(
                        "the combinations are too many to decide: pin some functions to channels of their own");
        assertThat(ChannelPlanner.fits(fiveChannels)).isFalse();
        assertThat(ChannelPlanner.doesNotFit(fiveChannels)).isFalse();
    }

    @Test
    void whatIsCertainlyTooMuchDoesNotFit() {
        ChannelProblem twoChannels = withChannels(Graph.mycielski(2).asFunctions(), 2);
        assertThat(ChannelPlanner.plan(twoChannels).outcome()).isEqualTo(Outcome.DOES_NOT_FIT);
        assertThat(ChannelPlanner.doesNotFit(twoChannels)).isTrue();
    }

    @Test
    void channelsAndPositionsThatCannotBeCountedAreNone() {
        assertThat(ChannelPlanner.channelsNeeded(HARD.asFunctions())).isEmpty();
        assertThat(ChannelPlanner.noNumberDoes(HARD.asFunctions())).isFalse();
        ChannelProblem phases = HARD.asPhases();
        assertThat(GroupNeed.leastPositions(phases, phases.switched())).isEmpty();
    }

    @Test
    void stepsThatAreSpentAreGone() {
        Effort effort = Effort.whole();
        effort.keep(3);
        effort.spend(2);
        assertThatThrownBy(() -> effort.spend(2)).isInstanceOf(Effort.TooManyCombinations.class);
    }

    private static ChannelProblem withChannels(ChannelProblem problem, int channels) {
        Radio radio = problem.radio();
        return new ChannelProblem(
                new Radio(RadioLink.of(channels), radio.controls(), radio.functions(), radio.channels(), List.of()),
                problem.phases());
    }
}
