package dev.ledgerwing.web.history;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.web.desk.Revision;
import dev.ledgerwing.web.support.Moments;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A page of the revisions of an airframe, newest first, ready to be shown.
 *
 * @param head number of the newest revision of all
 * @param later number to start the page of later revisions from, earlier that of earlier ones; null where there are none
 */
record HistoryView(
        List<Row> rows,
        int head,
        @Nullable Integer later,
        @Nullable Integer earlier) {

    static final int PAGE = 100;

    /**
     * One revision.
     *
     * @param nature what a change of mass meant; empty where the mass did not change
     * @param change of the predicted mass against the revision before; empty for the first
     */
    record Row(
            int number,
            String title,
            String who,
            String when,
            String reason,
            String nature,
            String predicted,
            String change,
            Verdict verdict) {}

    /**
     * The view of revisions read from {@code newest} back.
     *
     * @param found one more than a page holds, if there are as many
     */
    static HistoryView of(List<Revision> found, int newest, int head, Writer writer) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < Math.min(PAGE, found.size()); i++) {
            rows.add(writer.row(found.get(i), i + 1 < found.size() ? found.get(i + 1) : null));
        }
        return new HistoryView(
                rows,
                head,
                newest >= head ? null : Math.min(head, newest + PAGE),
                found.size() > PAGE ? newest - PAGE : null);
    }

    /** Writes revisions in a member's units. */
    record Writer(Figures figures, Moments moments) {

        /** @param before the revision before; null for the first */
        Row row(Revision revision, @Nullable Revision before) {
            return new Row(
                    revision.number(),
                    revision.title(),
                    revision.author(),
                    moments.full(revision.moment()),
                    revision.reason(),
                    nature(revision, before),
                    figures.mass(revision.predicted()),
                    change(revision, before),
                    revision.massVerdict());
        }

        private static String nature(Revision revision, @Nullable Revision before) {
            boolean moved = before != null
                    && (!revision.basic().equals(before.basic())
                            || !revision.predicted().equals(before.predicted()));
            return moved ? revision.nature().words() : "";
        }

        private String change(Revision revision, @Nullable Revision before) {
            if (before == null) {
                return "";
            }
            Mass change = revision.predicted().minus(before.predicted());
            return change.mg() == 0 ? "±0" : figures.signedMass(change);
        }
    }
}
