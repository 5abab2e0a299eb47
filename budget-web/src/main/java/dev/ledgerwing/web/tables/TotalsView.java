package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.TableTotal;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The sums of a table against ours, cut to what a page can hold; where not all can be shown, those that hold are left out first.
 *
 * @param count how many there are
 * @param wrong how many of them are not the sums of their rows
 */
record TotalsView(int count, int wrong, List<Row> shown) {

    private static final int MOST_SHOWN = 50;

    /**
     * One of them.
     *
     * @param stated null = it states none that can be read
     * @param sentence how it came out, where there is more to say than that it holds; empty = there is not
     */
    record Row(int row, String label, @Nullable String stated, String ownSum, Verdict verdict, String sentence) {}

    static TotalsView of(List<TableTotal> totals, Figures figures) {
        boolean allFit = totals.size() <= MOST_SHOWN;
        return new TotalsView(
                totals.size(),
                (int) totals.stream()
                        .filter(total -> verdict(total) == Verdict.BREAKS)
                        .count(),
                totals.stream()
                        .filter(total -> allFit || verdict(total) != Verdict.HOLDS)
                        .limit(MOST_SHOWN)
                        .map(total -> row(total, figures))
                        .toList());
    }

    private static Row row(TableTotal total, Figures figures) {
        Verdict verdict = verdict(total);
        return new Row(
                total.row(),
                total.label(),
                total.stated() == null ? null : figures.smallMass(total.stated()),
                figures.smallMass(total.ownSum()),
                verdict,
                verdict == Verdict.HOLDS ? "" : total.sentence());
    }

    /** A sum in which a mass is missing proves nothing, even where the rest of it comes to the same. */
    private static Verdict verdict(TableTotal total) {
        if (total.stated() != null && !total.agrees()) {
            return Verdict.BREAKS;
        }
        return total.agrees() && total.complete() ? Verdict.HOLDS : Verdict.UNKNOWN;
    }

    /** Whether some are not shown. */
    public boolean isCut() {
        return shown.size() < count;
    }
}
