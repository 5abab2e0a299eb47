package dev.ledgerwing.core.outputs;

import static dev.ledgerwing.core.outputs.OutputRecords.bank;
import static dev.ledgerwing.core.outputs.OutputRecords.board;
import static dev.ledgerwing.core.outputs.OutputRecords.drawing;
import static dev.ledgerwing.core.outputs.OutputRecords.output;
import static dev.ledgerwing.core.outputs.OutputRecords.part;
import static dev.ledgerwing.core.outputs.OutputRecords.servos;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import org.junit.jupiter.api.Test;

class BoardSwapTest {

    private static final PartLine OLD = part("fc", "Flight controller", Category.AVIONICS, 1, PortNeeds.NONE);

    private static Build aboard(PartLine line, FittedBoard fitted) {
        return Ledgers.with(line, servos("flap", 1, 1))
                .withBoards(List.of(board("small", bank("A", 1, 4)), board("large", bank("A", 1, 8))))
                .withFittedBoard(fitted)
                .withOutputs(List.of(output("flap", 3, new Driven("flap", 1))));
    }

    @Test
    void theLineTakesMassAndCurrentOfTheCandidate() {
        Build build = aboard(drawing(OLD, 0.1, 0.3), new FittedBoard("small", "fc"));

        Build swapped = BoardSwap.apply(build, "large");

        PartLine line = swapped.line("fc").orElseThrow();
        assertThat(swapped.outputs().fitted()).isEqualTo(new FittedBoard("large", "fc"));
        assertThat(line.name()).isEqualTo("Board large");
        assertThat(line.mass().unitMass()).isEqualTo(Mass.ofGrams(38));
        assertThat(line.mass().basis()).isEqualTo(Basis.CATALOGUE);
        assertThat(line.electrical()).singleElement().satisfies(load -> {
            assertThat(load.typicalA()).isEqualTo(0.2);
            assertThat(load.peakA()).isEqualTo(0.5);
        });
        assertThat(swapped.outputs().assignments()).isEqualTo(build.outputs().assignments());
    }

    @Test
    void aLineWithoutALoadGetsOneOnNoRail() {
        PartLine line = BoardSwap.apply(aboard(OLD, new FittedBoard("small", "fc")), "large")
                .line("fc")
                .orElseThrow();

        assertThat(line.electrical()).singleElement().satisfies(load -> {
            assertThat(load.rail()).isNull();
            assertThat(load.peakA()).isEqualTo(0.5);
        });
    }

    @Test
    void withoutALineItOnlyChooses() {
        Build build = aboard(OLD, FittedBoard.NONE);

        Build swapped = BoardSwap.apply(build, "large");

        assertThat(swapped).isEqualTo(build.withFittedBoard(new FittedBoard("large", null)));
    }

    @Test
    void theBoardAboardIsNotSwappedWithItself() {
        Build build = aboard(OLD, new FittedBoard("small", "fc"));

        assertThat(BoardSwap.apply(build, "small")).isEqualTo(build);
    }

    @Test
    void whatIsNoCandidateIsRefused() {
        assertThatThrownBy(() -> BoardSwap.apply(aboard(OLD, FittedBoard.NONE), "other"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("there is no flight controller “other”");
    }
}
