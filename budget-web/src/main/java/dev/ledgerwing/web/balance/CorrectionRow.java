package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.balance.correction.Correction;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.review.FindingChange;
import dev.ledgerwing.core.review.ReviewDelta;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * A correction ready to try.
 *
 * @param cost what it adds; {@code 0 g} where it adds nothing
 * @param says what else it does, in a few words
 */
record CorrectionRow(String key, String sentence, String cost, String says) {

    static CorrectionRow of(Correction offer, BuildReview before) {
        Figures figures = before.units();
        ReviewDelta delta = ReviewDelta.between(before, BuildReview.of(offer.after(), figures));
        return new CorrectionRow(
                offer.key(),
                offer.sentence(figures),
                offer.cost().mg() == 0 ? figures.mass(offer.cost()) : figures.signedMass(offer.cost()),
                says(offer, delta));
    }

    private static String says(Correction offer, ReviewDelta delta) {
        List<String> said = new ArrayList<>();
        List<String> broken = delta.findings().stream()
                .filter(change -> change.isWorse()
                        && change.finding().verdict() != Verdict.HOLDS
                        && change.finding().verdict() != Verdict.TIGHT)
                .map(FindingChange::finding)
                .map(finding -> finding.sentence())
                .toList();
        said.add(broken.isEmpty() ? "Breaks nothing." : String.join(" ", broken));
        said.addAll(offer.declareAgain());
        return String.join(" ", said);
    }
}
