package dev.ledgerwing.core.outputs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Builds;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.Supply;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.assertj.core.groups.Tuple;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class OutputStatementTest {

    private static final PartLine SERVOS =
            line("L010", "Servo, aileron", Category.SERVO, 2, new PortNeeds(2, 0, List.of(), 0, 0));
    private static final PartLine LIGHTS =
            line("L011", "Light", Category.AVIONICS, 2, new PortNeeds(1, 0, List.of(), 0, 0));
    private static final PartLine COMPASS =
            line("L012", "Compass", Category.AVIONICS, 1, new PortNeeds(0, 1, List.of("0x0d"), 0, 0));
    private static final PartLine AIRSPEED =
            line("L013", "Airspeed sensor", Category.AVIONICS, 1, new PortNeeds(0, 0, List.of("0X0D"), 0, 1));
    private static final PartLine CONTROLLER = line("L014", "Controller", Category.AVIONICS, 1, PortNeeds.NONE);

    private static PartLine line(String id, String name, Category category, int quantity, PortNeeds needs) {
        return new PartLine(
                id,
                "wing",
                name,
                category,
                quantity,
                LineMass.of(Mass.ofGrams(40), Basis.WEIGHED),
                LinePlace.UNKNOWN,
                FitState.FITTED,
                Supply.NONE,
                null,
                category == Category.SERVO ? List.of("aileron") : List.of(),
                List.of(new ElectricalLoad(
                        null, ElectricalLoad.Draws.CONSTANT_CURRENT, 0.2, 1.3, null, null, Map.of(), null, null)),
                needs);
    }

    private static OutputBank bank(String name, int first, int last, Double... ratesHz) {
        return new OutputBank(
                name,
                IntStream.rangeClosed(first, last).boxed().toList(),
                List.of(ratesHz),
                List.of(PulseKind.SERVO_PULSE, PulseKind.ON_OFF));
    }

    private static Board board(String code, @Nullable Integer serial, @Nullable Double outputA, OutputBank... banks) {
        return new Board(code, "Board " + code, List.of(banks), serial, 1, 0, 2, Mass.ofGrams(52), 0.3, 0.5, outputA);
    }

    private static Output output(String code, @Nullable Integer number, PulseKind pulse, String line, int pieces) {
        return new Output(
                code,
                code,
                number,
                List.of(new Driven(line, pieces)),
                pulse,
                60.0,
                50.0,
                1000.0,
                2000.0,
                1500.0,
                false);
    }

    private static Build with(List<PartLine> lines, List<Output> outputs, Board... boards) {
        return Builds.small()
                .withFunctions(List.of(new RadioFunction(
                        "aileron",
                        "Aileron",
                        RadioFunction.Kind.PROPORTIONAL,
                        List.of(),
                        RadioFunction.Criticality.FLIGHT,
                        false)))
                .withLines(lines)
                .withBoards(List.of(boards))
                .withOutputs(outputs)
                .withFittedBoard(new FittedBoard(
                        boards.length == 0 ? null : boards[0].code(),
                        lines.contains(CONTROLLER) ? CONTROLLER.id() : null));
    }

    private static List<Finding> findings(Build build) {
        return OutputFindings.of(OutputStatement.of(build));
    }

    private static Tuple[] said(List<Finding> findings) {
        return findings.stream()
                .map(finding -> tuple(finding.verdict(), finding.sentence()))
                .toArray(Tuple[]::new);
    }

    @Test
    void anEmptyRecordIsNotKnownAndSaysWhereToBegin() {
        assertThat(findings(Builds.small())).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
            assertThat(finding.sentence())
                    .isEqualTo(
                            "Nothing is recorded of outputs and ports: begin with the flight controllers that might be"
                                    + " fitted, and with what each part needs of them.");
        });
    }

    @Test
    void withoutABoardNothingIsHeldAgainstAnything() {
        assertThat(said(findings(with(List.of(SERVOS), List.of()))))
                .containsExactly(tuple(
                        Verdict.UNKNOWN,
                        "No flight controller is recorded: what the parts need has nothing to be held against."));
    }

    @Test
    void aShortageIsSaidInNumbers() {
        Build build = with(List.of(SERVOS, LIGHTS, COMPASS), List.of(), board("small", 0, null, bank("A", 1, 2, 50.0)));

        assertThat(said(findings(build)))
                .contains(
                        tuple(Verdict.BREAKS, "The parts need 3 outputs, “Board small” has 2: 1 short."),
                        tuple(Verdict.BREAKS, "The parts need 1 serial port, “Board small” has 0: 1 short."),
                        tuple(Verdict.BREAKS, "Nothing drives any of the 2 pieces of “Servo, aileron”."));
    }

    @Test
    void nothingLeftIsTightAndNotKnownIsNotFine() {
        Build build = with(
                List.of(SERVOS, COMPASS),
                List.of(
                        output("left", 1, PulseKind.SERVO_PULSE, "L010", 1),
                        output("right", 2, PulseKind.SERVO_PULSE, "L010", 1)),
                board("small", null, null, bank("A", 1, 2, 50.0)));

        assertThat(said(findings(build)))
                .containsExactly(
                        tuple(Verdict.TIGHT, "The parts need 2 outputs, “Board small” has 2: none is left."),
                        tuple(
                                Verdict.UNKNOWN,
                                "The parts need 1 serial port, and how many “Board small” has is not known."));
    }

    @Test
    void oneAddressOnOneBusClashesHoweverItIsWritten() {
        OutputStatement statement =
                OutputStatement.of(with(List.of(COMPASS, AIRSPEED), List.of(), board("small", 2, null)));

        assertThat(statement.aboard().orElseThrow().clashes())
                .singleElement()
                .satisfies(
                        clash -> assertThat(clash.sentence())
                                .isEqualTo(
                                        "Airspeed sensor and Compass both answer to 0x0D, and there is one I²C bus to keep them apart."));
        assertThat(OutputFindings.of(statement)).extracting(Finding::code).contains("outputs.address");
    }

    @Test
    void aBankHasOneRateAndOneKindForAllItsOutputs() {
        Build build = with(
                List.of(SERVOS, LIGHTS),
                List.of(
                        output("left", 1, PulseKind.SERVO_PULSE, "L010", 1),
                        output("right", 2, PulseKind.SERVO_PULSE, "L010", 1),
                        output("lights", 3, PulseKind.ON_OFF, "L011", 2)),
                board("small", 0, null, bank("A", 1, 8, 200.0)));

        assertThat(said(findings(build)))
                .contains(
                        tuple(
                                Verdict.BREAKS,
                                "“lights” needs on and off, bank A gives servo pulses to all its outputs."),
                        tuple(Verdict.BREAKS, "“left” bears 60\u2009Hz at most, bank A gives 200\u2009Hz."));
    }

    @Test
    void doubleUseAndNumbersThatAreNotThereAreNamed() {
        Build build = with(
                List.of(SERVOS, LIGHTS),
                List.of(
                        output("left", 1, PulseKind.SERVO_PULSE, "L010", 1),
                        output("right", 1, PulseKind.SERVO_PULSE, "L010", 1),
                        output("lights", 9, PulseKind.SERVO_PULSE, "L011", 2)),
                board("small", 0, null, bank("A", 1, 4, 50.0)));

        assertThat(said(findings(build)))
                .contains(
                        tuple(Verdict.BREAKS, "Output 1 is used twice: by “left” and “right”."),
                        tuple(Verdict.BREAKS, "“lights” is meant for output 9, which “Board small” has not."));
    }

    @Test
    void servosOfTheFlightOnOneYLeadAreTightAndTheirCurrentsAdd() {
        Build build = with(
                List.of(SERVOS, LIGHTS),
                List.of(
                        output("both", 1, PulseKind.SERVO_PULSE, "L010", 2),
                        output("lights", 2, PulseKind.SERVO_PULSE, "L011", 2)),
                board("small", 0, 5.0, bank("A", 1, 4, 50.0)));

        assertThat(said(findings(build)))
                .contains(
                        tuple(
                                Verdict.TIGHT,
                                "2 × Servo, aileron hang on one output, 2.6\u2009A at peak through one plug: neither can be"
                                        + " set, or fail, alone."),
                        tuple(
                                Verdict.BREAKS,
                                "All that hangs on the outputs draws 5.2\u2009A at peak, and their plugs may carry 5\u2009A"
                                        + " together, if the current passes through the board."));
        assertThat(findings(build)).noneMatch(finding -> finding.subject().equals("lights"));
    }

    @Test
    void aPlanFillsInWhatNobodyRecordedAndKeepsTheRest() {
        Build build = with(
                List.of(SERVOS, LIGHTS),
                List.of(output("left", 3, PulseKind.SERVO_PULSE, "L010", 1)),
                board("small", 0, null, bank("A", 1, 4, 50.0)));

        Build planned = OutputPlan.apply(build);

        assertThat(planned.outputs().assignments())
                .extracting(Output::code, Output::number, Output::pieces)
                .containsExactly(tuple("left", 3, 1), tuple("servo-aileron", 1, 1), tuple("light", 2, 2));
        assertThat(OutputStatement.of(planned).undriven()).isEmpty();
        assertThat(OutputPlan.apply(planned)).isEqualTo(planned);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OutputPlan.apply(with(List.of(SERVOS), List.of())))
                .withMessage("choose the flight controller that is aboard first");
    }

    @Test
    void whatStaysAtHomeInTheDesignCaseNeedsNothing() {
        Build build = with(List.of(SERVOS, LIGHTS), List.of(), board("small", 0, null, bank("A", 1, 4, 50.0)));
        Build without = build.withLoadCases(List.of(build.designCase().leavingAtHome(LIGHTS.id())));

        assertThat(PortTally.of(build).need(PortKind.OUTPUT)).isEqualTo(3);
        assertThat(PortTally.of(without).need(PortKind.OUTPUT)).isEqualTo(2);
    }

    @Test
    void aCandidateWhoseRatesOrKindsOfPulseAreNotKnownIsNotFine() {
        OutputBank noRates =
                new OutputBank("A", List.of(1, 2, 3, 4), List.of(), List.of(PulseKind.SERVO_PULSE, PulseKind.DATA));
        OutputBank noPulses = new OutputBank("A", List.of(1, 2, 3, 4), List.of(50.0), List.of());
        Build build = with(
                List.of(SERVOS),
                List.of(),
                board("rates", 0, null, noRates),
                board("pulses", 0, null, noPulses),
                board("known", 0, null, bank("A", 1, 4, 50.0)));

        assertThat(OutputStatement.of(build).boards())
                .extracting(BoardComparison::verdict)
                .containsExactly(Verdict.UNKNOWN, Verdict.UNKNOWN, Verdict.HOLDS);
    }

    @Test
    void threeOnOneOutputAreAllNamed() {
        Build build = with(
                List.of(SERVOS, LIGHTS),
                List.of(
                        output("left", 1, PulseKind.SERVO_PULSE, "L010", 1),
                        output("right", 1, PulseKind.SERVO_PULSE, "L010", 1),
                        output("lights", 1, PulseKind.SERVO_PULSE, "L011", 2)),
                board("small", 0, null, bank("A", 1, 4, 50.0)));

        assertThat(said(findings(build)))
                .contains(tuple(Verdict.BREAKS, "Output 1 is used 3 times: by “left”, “right” and “lights”."));
    }

    @Test
    void candidatesAreHeldSideBySideWithTheirMassAndCurrent() {
        Build build = with(
                List.of(SERVOS, CONTROLLER),
                List.of(),
                board("small", 0, null, bank("A", 1, 1, 50.0)),
                board("large", 2, null, bank("A", 1, 8, 50.0)));

        List<BoardComparison> boards = OutputStatement.of(build).boards();

        assertThat(boards)
                .extracting(BoardComparison::aboard, BoardComparison::shortage, BoardComparison::verdict)
                .containsExactly(tuple(true, 1, Verdict.BREAKS), tuple(false, 0, Verdict.HOLDS));
        assertThat(boards.get(1).massDifference()).isEqualTo(Mass.ofGrams(12));
        assertThat(boards.get(1).typicalDifferenceA()).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void anotherBoardCarriesItsMassAndCurrentIntoTheLedger() {
        Build build = with(
                List.of(SERVOS, CONTROLLER),
                List.of(),
                board("small", 0, null, bank("A", 1, 1, 50.0)),
                board("large", 2, null, bank("A", 1, 8, 50.0)));

        Build swapped = BoardSwap.apply(build, "large");

        PartLine controller = swapped.line("L014").orElseThrow();
        assertThat(controller.mass()).isEqualTo(LineMass.of(Mass.ofGrams(52), Basis.CATALOGUE));
        assertThat(controller.electrical().get(0).typicalA()).isEqualTo(0.3);
        assertThat(controller.name()).isEqualTo("Board large");
        assertThat(controller.state()).isEqualTo(FitState.PLANNED);
        assertThat(swapped.outputs().fitted()).isEqualTo(new FittedBoard("large", "L014"));
        assertThat(BoardSwap.apply(build, "small")).isEqualTo(build);
        assertThatIllegalArgumentException().isThrownBy(() -> BoardSwap.apply(build, "lost"));
    }
}
