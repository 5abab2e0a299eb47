package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.outputs.PortKind;
import dev.ledgerwing.core.outputs.PortRow;
import dev.ledgerwing.core.outputs.Undriven;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import java.util.List;

/** The outputs and ports of one build in words and figures. What is not known says so. */
public final class OutputSummary {

    private static final String NOT_KNOWN = "not known";

    private final BuildReview review;
    private final OutputStatement outputs;

    public OutputSummary(BuildReview review) {
        this.review = review;
        this.outputs = review.outputs();
    }

    public VerdictMark verdict() {
        return VerdictMark.of(review.verdict(Budget.OUTPUTS));
    }

    /** The summary, cell by cell. */
    public List<Fact> facts() {
        return List.of(
                board(),
                need(PortKind.OUTPUT, "Outputs"),
                need(PortKind.SERIAL_PORT, "Serial ports"),
                undriven(),
                twice());
    }

    private Fact board() {
        Board board = outputs.fitted();
        int others = outputs.boards().size() - 1;
        return board == null
                ? new Fact("Flight controller", NOT_KNOWN, "none is chosen")
                : new Fact(
                        "Flight controller",
                        board.name(),
                        others == 0 ? "the only candidate" : "of " + (others + 1) + " candidates");
    }

    /** How many outputs the parts need, against those there are. */
    public Fact outputs() {
        return need(PortKind.OUTPUT, "Outputs");
    }

    private Fact need(PortKind kind, String label) {
        String needed = outputs.need().need(kind) + " needed";
        return outputs.aboard()
                .map(board -> new Fact(label, needed, against(board.port(kind))))
                .orElse(new Fact(label, needed, "no board is chosen"));
    }

    private static String against(PortRow row) {
        Integer supply = row.supply();
        return supply == null
                ? "how many there are is not known"
                : supply + " there" + (row.shortage() > 0 ? ", too few" : "");
    }

    private Fact undriven() {
        int pieces = outputs.undriven().stream().mapToInt(Undriven::pieces).sum();
        return outputs.undriven().isEmpty()
                ? new Fact("Undriven", "none", "of the parts that need an output")
                : new Fact("Undriven", pieces == 1 ? "1 piece" : pieces + " pieces", "nothing drives them yet");
    }

    private Fact twice() {
        int twice = outputs.doubleUse().size();
        return new Fact(
                "Used twice", twice == 0 ? "none" : String.valueOf(twice), "outputs with two things on one number");
    }
}
