package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.outputs.AddressClash;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.outputs.Undriven;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.OutputPictures;
import dev.ledgerwing.report.drawing.Picture;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The wiring and outputs sheet, ready to be printed: nothing in it needs computing. What is not known says so.
 *
 * @param warning why nobody may wire by it; null = it can be worked from
 * @param banks drawn
 * @param undriven parts that need outputs and have not got them, a sentence each
 * @param clashes addresses that cannot be told apart, a sentence each
 * @param boards the candidates side by side; none = there are no two
 */
public record OutputSheet(
        SheetTitle title,
        VerdictMark verdict,
        @Nullable SheetWarning warning,
        List<Fact> facts,
        Picture banks,
        List<OutputEntry> outputs,
        List<String> undriven,
        List<PortEntry> ports,
        List<String> clashes,
        List<BoardEntry> boards,
        List<FindingEntry> findings)
        implements PrintedSheet {

    public OutputSheet {
        facts = List.copyOf(facts);
        outputs = List.copyOf(outputs);
        undriven = List.copyOf(undriven);
        ports = List.copyOf(ports);
        clashes = List.copyOf(clashes);
        boards = List.copyOf(boards);
        findings = List.copyOf(findings);
    }

    /** The sheet of a reviewed build. */
    public static OutputSheet of(BuildReview review, SheetHead head) {
        OutputStatement outputs = review.outputs();
        OutputSummary summary = new OutputSummary(review);
        return new OutputSheet(
                SheetTitle.of(review.build().airframe(), head),
                summary.verdict(),
                warning(review),
                summary.facts(),
                OutputPictures.banks(outputs),
                OutputEntry.of(outputs, review.units()),
                outputs.undriven().stream().map(OutputSheet::sentence).toList(),
                PortEntry.of(outputs),
                outputs.aboard().stream()
                        .flatMap(board -> board.clashes().stream())
                        .map(AddressClash::sentence)
                        .toList(),
                outputs.boards().size() > 1 ? BoardEntry.of(outputs, review.units()) : List.of(),
                review.findings(Budget.OUTPUTS).stream().map(FindingEntry::of).toList());
    }

    private static @Nullable SheetWarning warning(BuildReview review) {
        List<String> broken = review.findings(Budget.OUTPUTS).stream()
                .filter(finding -> finding.verdict() == Verdict.BREAKS)
                .map(Finding::sentence)
                .toList();
        return broken.isEmpty()
                ? null
                : new SheetWarning("Something breaks: not to be wired like this", "NOT TO BE WIRED", broken, List.of());
    }

    private static String sentence(Undriven part) {
        String pieces = part.pieces() == 0
                ? "all pieces hang on an output"
                : part.pieces() + " of " + part.line().quantity() + " driven by nothing";
        String outputs = part.outputs() == 0
                ? ""
                : ", " + part.outputs() + (part.outputs() == 1 ? " output is" : " outputs are") + " missing";
        return part.line().name() + ": " + pieces + outputs + ".";
    }

    @Override
    public String template() {
        return "sheets/outputs";
    }
}
