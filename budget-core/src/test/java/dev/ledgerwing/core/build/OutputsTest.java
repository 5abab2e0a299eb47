package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.ledgerwing.core.build.Output.Driven;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class OutputsTest {

    private static Board board(OutputBank... banks) {
        return new Board("small", "Small board", List.of(banks), 2, 1, 0, 2, null, null, null, null);
    }

    private static OutputBank bank(String name, Integer... numbers) {
        return new OutputBank(name, List.of(numbers), List.of(50.0), List.of(PulseKind.SERVO_PULSE));
    }

    private static Output output(
            @Nullable Double maxHz, @Nullable Double wantedHz, double lowUs, double highUs, double restUs) {
        return new Output(
                "aileron",
                "Aileron",
                1,
                List.of(new Driven("L002", 2)),
                PulseKind.SERVO_PULSE,
                maxHz,
                wantedHz,
                lowUs,
                highUs,
                restUs,
                false);
    }

    @Test
    void aBoardCountsItsOutputsOnce() {
        assertThat(board(bank("A", 1, 2, 3), bank("B", 4)).outputs()).isEqualTo(4);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> board(bank("A", 1, 2), bank("B", 2, 3)))
                .withMessage("banks: output 2 is in two banks");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bank("A", 0))
                .withMessage("outputNumbers must be from 1 to 999, was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bank("A", 1, 1))
                .withMessage("outputNumbers must differ from each other");
    }

    @Test
    void aDeviceIsNotWantedFasterThanItBears() {
        assertThat(output(333.0, 50.0, 1000, 2000, 1500).pieces()).isEqualTo(2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> output(50.0, 333.0, 1000, 2000, 1500))
                .withMessage("wantedRateHz must not be above the fastest rate that the device bears");
    }

    @Test
    void theTravelHasALowAndAHighEndWithTheRestBetween() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> output(50.0, 50.0, 2000, 1000, 1500))
                .withMessage("lowUs must be below highUs, turn the sense instead");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> output(50.0, 50.0, 1000, 2000, 900))
                .withMessage("restUs must lie between the ends of the travel");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> output(50.0, 50.0, 10, 2000, 900))
                .withMessage("lowUs must be from 100 to 20000 µs, was 10.0");
    }

    @Test
    void whatIsDrivenAndFittedIsThere() {
        Build build = Builds.small();

        assertThatThrownBy(() -> build.withOutputs(
                        List.of(output(50.0, 50.0, 1000, 2000, 1500).withDrives(List.of(new Driven("L999", 1))))))
                .hasMessage("outputs.assignments[0].drives: there is no part “L999”");
        assertThatThrownBy(() -> build.withFittedBoard(new FittedBoard("small", "L999")))
                .isInstanceOfSatisfying(
                        InvalidBuild.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::place)
                                .containsExactly("outputs.fitted.board", "outputs.fitted.part"));
    }

    @Test
    void aPartThatGoesTakesItsPlaceOnOutputsAndAsTheBoardAlong() {
        Build build = Builds.small()
                .withOutputs(List.of(output(50.0, 50.0, 1000, 2000, 1500)))
                .withFittedBoard(new FittedBoard(null, "L002"));

        Build without = PartDeeds.removed(build, "L002");

        assertThat(without.outputs().assignments().get(0).drives()).isEmpty();
        assertThat(without.outputs().fitted().part()).isNull();
    }
}
