package dev.ledgerwing.report.review;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.FigureChange;
import dev.ledgerwing.core.review.FindingChange;
import dev.ledgerwing.core.review.ImpactPart;
import dev.ledgerwing.core.review.ReviewDelta;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.text.PlainPage;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The difference of two reviews for people at a terminal. */
public final class DeltaText {

    private static final int NAME = 34;
    private static final int FIGURE = 13;
    private static final int DECIMALS = 3;

    private final PlainPage page = new PlainPage();

    private DeltaText() {}

    public static String of(ReviewDelta delta) {
        return new DeltaText().text(delta);
    }

    private String text(ReviewDelta delta) {
        delta.impact().forEach(this::impact);
        if (!delta.figures().isEmpty()) {
            page.blank().hanging(row("Figures", "before", "after", "change"), "");
            delta.figures().forEach(this::figure);
        }
        if (!delta.findings().isEmpty()) {
            page.blank().line("Findings");
            delta.findings().forEach(this::finding);
        }
        return page.toString();
    }

    private void impact(ImpactPart part) {
        Verdict verdict = part.verdict();
        page.hanging(verdict == null ? " ".repeat(VerdictText.WIDTH) : VerdictText.column(verdict), part.text());
    }

    private void figure(FigureChange change) {
        Double difference = change.change();
        String sign = difference != null && difference > 0 ? "+" : "";
        String row = row(
                "  " + change.name(),
                number(change.before()),
                number(change.after()),
                difference == null ? "" : sign + number(difference));
        page.hanging(row, "");
    }

    private static String row(String name, String before, String after, String change) {
        return PlainPage.padded(name, NAME) + right(before) + right(after) + right(change);
    }

    private static String right(String figure) {
        return " ".repeat(Math.max(1, FIGURE - figure.length())) + figure;
    }

    private static String number(@Nullable Double value) {
        return value == null ? Verdict.UNKNOWN.word() : Figures.number(value, DECIMALS);
    }

    private void finding(FindingChange change) {
        String kind = change.kind().name().toLowerCase(Locale.ROOT);
        page.hanging(
                "  " + PlainPage.padded(kind, VerdictText.WIDTH)
                        + VerdictText.column(change.finding().verdict()),
                change.finding().sentence());
    }
}
