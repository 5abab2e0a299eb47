package dev.ledgerwing.web.history;

import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.build.Edit;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.review.FindingChange;
import dev.ledgerwing.core.review.ImpactPart;
import dev.ledgerwing.core.review.ReviewDelta;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.core.words.ChangeWords;
import dev.ledgerwing.core.words.EditText;
import dev.ledgerwing.web.desk.Snapshot;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What lies between two revisions: in the budgets, and edit by edit.
 *
 * @param impact what a builder has to be told, in one to a few sentences
 * @param findings those that came, went or changed their verdict
 * @param edits a page of them, {@code from} (counted from 1) to {@code to} of {@code count}
 */
record DifferenceView(
        List<ImpactPart> impact,
        List<FigureRow> figures,
        List<Shift> findings,
        List<EditText> edits,
        int from,
        int to,
        int count) {

    static final int PAGE = 200;

    /**
     * A finding on its way; null = it was not there, or is not there any more.
     *
     * @param sentence as it reads now, or as it read last
     */
    record Shift(@Nullable Verdict before, @Nullable Verdict after, String sentence) {}

    /** Two revisions, to be told apart in a member's units. */
    record Between(Snapshot before, Snapshot after, Figures figures) {

        /** @param start the first edit to be shown, counted from 0 */
        DifferenceView told(BuildChange change, int start) {
            BuildReview was = before.reviewIn(figures);
            BuildReview is = after.reviewIn(figures);
            ReviewDelta delta = ReviewDelta.between(was, is);
            List<Edit> page = page(change.edits(), start);
            int from = page.isEmpty() ? 0 : first(change.edits(), start) + 1;
            return new DifferenceView(
                    delta.impact(),
                    FigureRow.between(was, is),
                    delta.findings().stream().map(DifferenceView::shift).toList(),
                    new ChangeWords(before.build(), after.build(), figures).of(page),
                    from,
                    from == 0 ? 0 : from - 1 + page.size(),
                    change.edits().size());
        }
    }

    private static int first(List<Edit> edits, int start) {
        return Math.max(0, Math.min(start, edits.size() - 1)) / PAGE * PAGE;
    }

    private static List<Edit> page(List<Edit> edits, int start) {
        int first = first(edits, start);
        return edits.subList(first, Math.min(edits.size(), first + PAGE));
    }

    private static Shift shift(FindingChange change) {
        return new Shift(
                verdict(change.before()),
                verdict(change.after()),
                change.finding().sentence());
    }

    private static @Nullable Verdict verdict(@Nullable Finding finding) {
        return finding == null ? null : finding.verdict();
    }

    /** Where the edits before this page start, counted from 0; null on the first page. */
    public @Nullable Integer previous() {
        return from <= 1 ? null : from - 1 - PAGE;
    }

    /** Where the edits after this page start; null on the last page. */
    public @Nullable Integer next() {
        return to >= count ? null : to;
    }
}
