package dev.ledgerwing.report.review;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.report.sheet.BalanceSummary;
import dev.ledgerwing.report.sheet.Fact;
import dev.ledgerwing.report.sheet.MassSummary;
import dev.ledgerwing.report.sheet.OutputSummary;
import dev.ledgerwing.report.sheet.PowerSummary;
import dev.ledgerwing.report.sheet.RadioSummary;
import dev.ledgerwing.report.text.PlainPage;

/** A review for people at a terminal. */
public final class ReviewText {

    private static final int LABEL = 22;
    private static final int VALUE = 20;

    private final BuildReview review;
    private final PlainPage page = new PlainPage();

    private ReviewText(BuildReview review) {
        this.review = review;
    }

    public static String of(BuildReview review) {
        return new ReviewText(review).text();
    }

    private String text() {
        Airframe airframe = review.build().airframe();
        page.line(airframe.name() + ", stage " + airframe.stage().title()).blank();
        mass();
        page.blank();
        balance();
        page.blank();
        power();
        page.blank();
        radio();
        page.blank();
        outputs();
        page.blank().line("Findings");
        review.findings().forEach(this::finding);
        page.blank().line(conclusion());
        return page.toString();
    }

    private void mass() {
        MassSummary summary = new MassSummary(review);
        budget(Budget.MASS, summary.verdict().words());
        summary.facts().forEach(this::fact);
    }

    private void balance() {
        BalanceSummary summary = new BalanceSummary(review);
        budget(Budget.BALANCE, summary.verdict().words());
        summary.facts().forEach(this::fact);
    }

    private void power() {
        PowerSummary summary = new PowerSummary(review);
        budget(Budget.POWER, summary.verdict().words());
        summary.facts().forEach(this::fact);
    }

    private void radio() {
        RadioSummary summary = new RadioSummary(review);
        budget(Budget.RADIO, summary.verdict().words());
        summary.facts().forEach(this::fact);
    }

    private void outputs() {
        OutputSummary summary = new OutputSummary(review);
        budget(Budget.OUTPUTS, summary.verdict().words());
        summary.facts().forEach(this::fact);
    }

    private void budget(Budget budget, String words) {
        page.hanging(PlainPage.padded(budget.title(), LABEL), VerdictText.shape(review.verdict(budget)) + " " + words);
    }

    private void fact(Fact fact) {
        page.hanging(
                PlainPage.padded("  " + fact.label(), LABEL) + PlainPage.padded(fact.value(), VALUE) + "  ",
                fact.note());
    }

    private void finding(Finding finding) {
        page.hanging("  " + VerdictText.column(finding.verdict()), finding.sentence());
        finding.remedies().forEach(remedy -> page.hanging(" ".repeat(VerdictText.WIDTH + 2) + "– ", remedy.sentence()));
    }

    private String conclusion() {
        return switch (review.verdict()) {
            case BREAKS -> "Something breaks.";
            case UNKNOWN -> "Nothing is known to break, but not everything is known.";
            case TIGHT -> "Nothing breaks; something is tight.";
            case HOLDS -> "Nothing breaks.";
        };
    }
}
