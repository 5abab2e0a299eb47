package dev.ledgerwing.web.airframe;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A finding with what would put it right.
 *
 * @param part id of the part it is about, if it is about one
 */
public record FindingRow(
        Verdict verdict, String sentence, @Nullable String part, List<Cure> cures) {

    /** More than these nobody reads; they come worst first. */
    public static final int MOST = 50;

    /**
     * What would put a finding right.
     *
     * @param cost {@code saves 40 g}; empty where it has none to speak of
     */
    public record Cure(
            String sentence, String cost, @Nullable String part) {}

    /** Those of one budget, worst first. */
    public static List<FindingRow> of(BuildReview review, Budget budget) {
        return review.findings(budget).stream()
                .limit(MOST)
                .map(finding -> row(finding, review.units()))
                .toList();
    }

    private static FindingRow row(Finding finding, Figures figures) {
        return new FindingRow(
                finding.verdict(),
                finding.sentence(),
                finding.line(),
                finding.remedies().stream().map(remedy -> cure(remedy, figures)).toList());
    }

    private static Cure cure(Remedy remedy, Figures figures) {
        return new Cure(remedy.sentence(), cost(remedy.cost(), figures), remedy.line());
    }

    private static String cost(@Nullable Mass cost, Figures figures) {
        if (cost == null || cost.mg() == 0) {
            return "";
        }
        return cost.isNegative() ? "saves " + figures.mass(Mass.ZERO.minus(cost)) : "costs " + figures.mass(cost);
    }
}
