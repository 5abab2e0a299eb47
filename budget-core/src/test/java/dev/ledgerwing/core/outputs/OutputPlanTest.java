package dev.ledgerwing.core.outputs;

import static dev.ledgerwing.core.outputs.OutputRecords.bank;
import static dev.ledgerwing.core.outputs.OutputRecords.board;
import static dev.ledgerwing.core.outputs.OutputRecords.build;
import static dev.ledgerwing.core.outputs.OutputRecords.output;
import static dev.ledgerwing.core.outputs.OutputRecords.servos;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.PartLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputPlanTest {

    private static final Board BOARD = board("teal", bank("A", 1, 4), bank("B", 5, 4));

    private static List<Output> planned(PartLine line, Output... recorded) {
        return OutputPlan.apply(build(BOARD, List.of(line), recorded)).outputs().assignments();
    }

    @Test
    void everyPieceGetsAnOutputOfItsOwn() {
        List<Output> planned = planned(servos("aileron", 2, 2));

        assertThat(planned).extracting(Output::name).containsExactly("Servo, aileron 1", "Servo, aileron 2");
        assertThat(planned).extracting(Output::code).containsExactly("servo-aileron", "servo-aileron-2");
        assertThat(planned).extracting(Output::number).containsExactly(1, 2);
        assertThat(planned).extracting(Output::drives).containsOnly(List.of(new Driven("aileron", 1)));
    }

    @Test
    void fewerOutputsThanPiecesMakeAYLead() {
        List<Output> planned = planned(servos("flap", 5, 2));

        assertThat(planned)
                .extracting(Output::drives)
                .containsExactly(List.of(new Driven("flap", 3)), List.of(new Driven("flap", 2)));
    }

    @Test
    void aPieceWithTwoPlugsGetsBothAtOnce() {
        List<Output> planned = planned(servos("gimbal", 1, 2));

        assertThat(planned).extracting(Output::number).containsExactly(1, 2);
        assertThat(planned).extracting(Output::drives).containsOnly(List.of(new Driven("gimbal", 1)));
    }

    @Test
    void whatIsRecordedStaysAndTheNextOneIsLikeIt() {
        Output recorded = output("left", 7, new Driven("aileron", 1));

        List<Output> planned = planned(servos("aileron", 2, 2), recorded);

        assertThat(planned.get(0)).isEqualTo(recorded);
        Output added = planned.get(1);
        assertThat(added.name()).isEqualTo("Servo, aileron 2");
        assertThat(added.number()).isEqualTo(5);
        assertThat(added.maxRateHz()).isEqualTo(60.0);
        assertThat(added.wantedRateHz()).isEqualTo(50.0);
        assertThat(added.lowUs()).isNull();
        assertThat(added.reversed()).isFalse();
    }

    @Test
    void aRecordedYLeadIsNotTakenApart() {
        Output recorded = output("both", 1, new Driven("aileron", 2));

        assertThat(planned(servos("aileron", 2, 2), recorded)).containsExactly(recorded);
    }

    @Test
    void aFullBoardLeavesTheLastOneWithoutANumber() {
        Build planned = OutputPlan.apply(build(board("small", bank("A", 1, 1)), List.of(servos("aileron", 2, 2))));

        assertThat(planned.outputs().assignments()).extracting(Output::number).containsExactly(1, null);
    }

    @Test
    void withoutABoardThereIsNothingToPlanOn() {
        assertThatThrownBy(() -> OutputPlan.apply(Ledgers.with(servos("aileron", 2, 2))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("choose the flight controller that is aboard first");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void planningLeavesNothingUndrivenAndPlanningAgainChangesNothing(long seed) {
        Random random = new Random(seed);
        List<PartLine> lines = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            lines.add(servos("s" + i, 1 + random.nextInt(3), 1 + random.nextInt(3)));
        }
        Board board = board("large", bank("A", 1, 8), bank("B", 9, 8));

        Build once = OutputPlan.apply(build(board, lines));

        assertThat(Undriven.of(once)).as("seed %d, %s", seed, lines).isEmpty();
        assertThat(OutputPlan.apply(once)).as("seed %d", seed).isEqualTo(once);
    }
}
