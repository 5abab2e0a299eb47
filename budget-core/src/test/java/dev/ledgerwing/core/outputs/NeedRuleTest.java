package dev.ledgerwing.core.outputs;

import static dev.ledgerwing.core.outputs.OutputRecords.bank;
import static dev.ledgerwing.core.outputs.OutputRecords.board;
import static dev.ledgerwing.core.outputs.OutputRecords.build;
import static dev.ledgerwing.core.outputs.OutputRecords.output;
import static dev.ledgerwing.core.outputs.OutputRecords.servos;
import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class NeedRuleTest {

    private static final Board BOARD = board("teal", bank("A", 1, 4));

    private static List<Finding> findings(Build build) {
        return OutputFindings.of(OutputStatement.of(build));
    }

    private static List<String> said(Build build, String code) {
        return findings(build).stream()
                .filter(finding -> finding.code().equals(code))
                .map(finding -> finding.verdict() + ": " + Said.sentence(finding))
                .toList();
    }

    @Test
    void aBoardWithoutAnyNeedIsNotKnownRatherThanFine() {
        List<Finding> findings = findings(build(BOARD, List.of()));

        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
            assertThat(finding.sentence())
                    .isEqualTo("No part says which outputs and ports it needs: enter them with the parts.");
        });
    }

    @Test
    void aServoThatSaysNothingIsNotKnown() {
        Build build = build(
                BOARD, List.of(servos("rudder", 1, 0), servos("flap", 1, 1)), output("flap", 1, new Driven("flap", 1)));

        assertThat(said(build, NeedRule.NEEDS))
                .containsExactly(
                        "UNKNOWN: “Servo, rudder” does not say how many outputs it needs, and nothing drives it.");
    }

    @Test
    void aServoThatIsDrivenHasNothingToSay() {
        Build build = build(
                BOARD,
                List.of(servos("rudder", 1, 0), servos("flap", 1, 1)),
                output("flap", 1, new Driven("flap", 1)),
                output("rudder", 2, new Driven("rudder", 1)));

        assertThat(said(build, NeedRule.NEEDS)).isEmpty();
    }

    @Test
    void morePiecesThanThereAreBreak() {
        Build build = build(
                BOARD,
                List.of(servos("flap", 2, 2)),
                output("one", 1, new Driven("flap", 2)),
                output("two", 2, new Driven("flap", 1)));

        assertThat(said(build, NeedRule.PIECES))
                .containsExactly("BREAKS: The outputs drive 3 pieces of “Servo, flap”, and there are 2.");
    }

    @Test
    void aPieceWithTwoPlugsIsDrivenTwice() {
        Build build = build(
                BOARD,
                List.of(servos("gimbal", 1, 2)),
                output("pan", 1, new Driven("gimbal", 1)),
                output("tilt", 2, new Driven("gimbal", 1)));

        assertThat(said(build, NeedRule.PIECES)).isEmpty();
    }

    @Test
    void kindsDoNotMixInABankOfUnknownKindsEither() {
        Board unknown = board("teal", new OutputBank("A", List.of(1, 2, 3), List.of(50.0), List.of()));
        Output lamp = new Output(
                "lamp",
                "Lamp",
                3,
                List.of(new Driven("lamp", 1)),
                PulseKind.ON_OFF,
                100.0,
                null,
                null,
                null,
                null,
                false);
        Build build = build(
                unknown,
                List.of(servos("flap", 2, 2), servos("lamp", 1, 1)),
                output("one", 1, new Driven("flap", 1)),
                output("two", 2, new Driven("flap", 1)),
                lamp);

        assertThat(said(build, BankRule.PULSE))
                .containsExactly("BREAKS: “Lamp” needs on and off, bank A gives one kind to all its outputs, and others"
                        + " there need servo pulses.");
        assertThat(said(build, BankRule.UNKNOWN))
                .containsExactly("UNKNOWN: Of bank A is not known: the kinds of pulse it can give.");
        assertThat(OutputStatement.of(build).banks()).extracting(BankUse::pulse).containsOnlyNulls();
    }
}
