package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Small records of boards, outputs and what parts need. */
final class OutputRecords {

    private OutputRecords() {}

    static PartLine servos(String id, int quantity, int outputs) {
        return part(id, "Servo, " + id, Category.SERVO, quantity, new PortNeeds(outputs, 0, List.of(), 0, 0));
    }

    static PartLine part(String id, String name, Category category, int quantity, PortNeeds needs) {
        PartLine plain =
                PartLine.named(id, "fuselage", name, category, quantity, LineMass.of(Mass.ofGrams(20), Basis.WEIGHED));
        return new PartLine(
                plain.id(),
                plain.assembly(),
                plain.name(),
                plain.category(),
                plain.quantity(),
                plain.mass(),
                plain.place(),
                plain.state(),
                plain.supply(),
                plain.note(),
                plain.serves(),
                plain.electrical(),
                needs);
    }

    static PartLine drawing(PartLine line, @Nullable Double typicalA, @Nullable Double peakA) {
        return line.withElectrical(List.of(new ElectricalLoad(
                null, ElectricalLoad.Draws.CONSTANT_CURRENT, typicalA, peakA, null, null, Map.of(), null, null)));
    }

    /** Servo pulses at 50 or 200 Hz. */
    static OutputBank bank(String name, int from, int count) {
        return new OutputBank(
                name,
                IntStream.range(from, from + count).boxed().toList(),
                List.of(50.0, 200.0),
                List.of(PulseKind.SERVO_PULSE));
    }

    /** Four serial ports, one I²C bus, one CAN bus, two analogue inputs, 38 g. */
    static Board board(String code, OutputBank... banks) {
        return new Board(code, "Board " + code, Arrays.asList(banks), 4, 1, 1, 2, Mass.ofGrams(38), 0.2, 0.5, null);
    }

    /** A servo that bears 60 Hz and wants 50. */
    static Output output(String code, @Nullable Integer number, Driven... drives) {
        return new Output(
                code,
                "Output " + code,
                number,
                Arrays.asList(drives),
                PulseKind.SERVO_PULSE,
                60.0,
                50.0,
                1000.0,
                2000.0,
                1500.0,
                false);
    }

    /** The board is aboard. */
    static Build build(Board board, List<PartLine> lines, Output... outputs) {
        return Ledgers.with(lines)
                .withBoards(List.of(board))
                .withFittedBoard(new FittedBoard(board.code(), null))
                .withOutputs(Arrays.asList(outputs));
    }
}
