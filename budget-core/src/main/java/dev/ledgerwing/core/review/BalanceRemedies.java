package dev.ledgerwing.core.review;

import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.balance.correction.Correction;
import dev.ledgerwing.core.balance.correction.CorrectionFinder;
import dev.ledgerwing.core.balance.correction.Corrections;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Stream;

/**
 * Puts the cheapest corrections to the findings about the CG. Finding them costs many balances, so a review does without until somebody
 * looks.
 */
public final class BalanceRemedies {

    private static final int OF_EACH_FINDING = 3;

    private BalanceRemedies() {}

    /** The same review, with remedies where a flight case is out of its band or too near a limit. */
    public static BuildReview in(BuildReview review) {
        return in(review, CorrectionFinder.of(review.balance()));
    }

    /** As {@link #in(BuildReview)}, with corrections that somebody has found already. */
    public static BuildReview in(BuildReview review, Corrections corrections) {
        if (corrections.offers().isEmpty()) {
            return review;
        }
        List<Remedy> remedies = corrections.offers().stream()
                .limit(OF_EACH_FINDING)
                .map(offer -> remedy(offer, review.units()))
                .toList();
        return new BuildReview(
                review.mass(),
                review.massForecast(),
                review.balance(),
                review.power(),
                review.radio(),
                review.outputs(),
                review.units(),
                review.figures(),
                review.findings().stream()
                        .map(finding -> needsOne(finding) ? with(finding, remedies) : finding)
                        .toList());
    }

    private static Remedy remedy(Correction offer, Figures units) {
        return new Remedy(offer.sentence(units), offer.cost(), offer.line());
    }

    private static boolean needsOne(Finding finding) {
        return finding.code().equals(BalanceFindings.CG)
                && (finding.verdict() == Verdict.BREAKS || finding.verdict() == Verdict.TIGHT);
    }

    private static Finding with(Finding finding, List<Remedy> remedies) {
        return new Finding(
                finding.code(),
                finding.budget(),
                finding.verdict(),
                finding.subject(),
                finding.line(),
                finding.measured(),
                finding.limit(),
                finding.marginLeft(),
                finding.unit(),
                finding.sentence(),
                Stream.concat(finding.remedies().stream(), remedies.stream()).toList());
    }
}
