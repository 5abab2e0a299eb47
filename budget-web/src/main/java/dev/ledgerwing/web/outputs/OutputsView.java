package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.outputs.PortKind;
import dev.ledgerwing.core.outputs.PortRow;
import dev.ledgerwing.core.outputs.Undriven;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.OutputPictures;
import dev.ledgerwing.web.airframe.FindingRow;
import java.util.ArrayList;
import java.util.List;

/**
 * The outputs page of one airframe, ready to be shown.
 *
 * @param isEmpty whether nothing of the outputs is recorded
 * @param sentence need against supply of outputs, in one line
 * @param moreFindings how many findings are left out, none of them worse than those shown
 * @param aboard name of the board aboard; empty where none is chosen
 * @param picture its banks with what hangs on them; ready markup of our own
 * @param silent parts that might need something by what they are, and say nothing of it
 */
record OutputsView(
        boolean isEmpty,
        Verdict verdict,
        String sentence,
        List<FirstStep> steps,
        List<FindingRow> findings,
        int moreFindings,
        BoardsView boards,
        String aboard,
        String picture,
        List<OutputLine> outputs,
        List<Trouble> troubles,
        List<PartPorts> ports,
        List<Silent> silent) {

    /** A part that an output is missing for, in words. */
    record Trouble(String line, String sentence) {}

    record Silent(String line, String name) {}

    /** What is to be done something about, or not known yet. */
    public List<FindingRow> pressing() {
        return findings.stream()
                .filter(finding -> finding.verdict() != Verdict.HOLDS)
                .toList();
    }

    /** What is fine. */
    public List<FindingRow> holding() {
        return findings.stream()
                .filter(finding -> finding.verdict() == Verdict.HOLDS)
                .toList();
    }

    /** Whether something has to be recorded before need and supply can be compared. */
    public boolean hasFirstSteps() {
        return steps.stream().anyMatch(step -> !step.isDone());
    }

    /** Whether planning again has a board to plan on and something to plan. */
    public boolean canPlan() {
        return !aboard.isEmpty() && (!outputs.isEmpty() || !troubles.isEmpty());
    }

    static OutputsView of(BuildReview review) {
        Build build = review.build();
        OutputStatement statement = review.outputs();
        List<FindingRow> findings = FindingRow.of(review, Budget.OUTPUTS);
        Board aboard = statement.fitted();
        return new OutputsView(
                statement.isBlank(),
                review.verdict(Budget.OUTPUTS),
                sentence(statement),
                FirstStep.of(build),
                findings,
                review.findings(Budget.OUTPUTS).size() - findings.size(),
                BoardsView.of(statement, review.units()),
                aboard == null ? "" : aboard.name(),
                OutputPictures.banks(statement).html(),
                OutputLine.of(statement),
                statement.undriven().stream().map(OutputsView::trouble).toList(),
                PartPorts.of(build),
                NeedsForm.silent(build).stream()
                        .map(part -> new Silent(part.id(), part.name()))
                        .toList());
    }

    /** {@code 12 outputs needed, 8 on the board: 4 short.} */
    private static String sentence(OutputStatement statement) {
        int need = statement.need().need(PortKind.OUTPUT);
        String needed = PortKind.OUTPUT.counted(need) + " needed";
        return statement
                .aboard()
                .map(board -> needed + ", " + onBoard(board.port(PortKind.OUTPUT)))
                .orElse(needed + ", and no flight controller is chosen yet.");
    }

    private static String onBoard(PortRow outputs) {
        Integer supply = outputs.supply();
        if (supply == null) {
            return "and how many the board has is not recorded.";
        }
        int free = supply - outputs.need();
        String rest = free < 0 ? -free + " short" : free == 0 ? "none left" : free + " left";
        return supply + " on the board: " + rest + ".";
    }

    /** {@code Servo, flap: 1 of its 2 pieces is driven by nothing, 1 output is missing.} */
    private static Trouble trouble(Undriven undriven) {
        PartLine line = undriven.line();
        List<String> words = new ArrayList<>();
        if (undriven.pieces() > 0) {
            words.add("nothing drives "
                    + (undriven.pieces() == line.quantity()
                            ? "it"
                            : undriven.pieces() + " of its " + line.quantity() + " pieces"));
        }
        if (undriven.outputs() > 0) {
            words.add(PortKind.OUTPUT.counted(undriven.outputs())
                    + (undriven.outputs() == 1 ? " is missing" : " are missing"));
        }
        return new Trouble(line.id(), line.name() + ": " + String.join(", ", words) + ".");
    }
}
