package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.balance.correction.Correction;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.review.CorrectionReview;
import dev.ledgerwing.core.review.FindingChange;
import dev.ledgerwing.core.review.ReviewDelta;
import dev.ledgerwing.core.verdict.Budget;
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
        ReviewDelta delta = CorrectionReview.of(before, offer).delta();
        return new CorrectionRow(
                offer.key(),
                offer.sentence(figures),
                offer.cost().mg() == 0 ? figures.mass(offer.cost()) : figures.signedMass(offer.cost()),
                says(offer, delta, before));
    }

    private static String says(Correction offer, ReviewDelta delta, BuildReview before) {
        List<String> said = new ArrayList<>();
        List<String> broken = delta.findings().stream()
                .filter(change -> change.isWorse()
                        && change.finding().verdict() != Verdict.HOLDS
                        && change.finding().verdict() != Verdict.TIGHT)
                .map(FindingChange::finding)
                .map(finding -> finding.sentence())
                .toList();
        said.add(broken.isEmpty() ? nothingNew(offer, before) : String.join(" ", broken));
        said.addAll(offer.declareAgain());
        return String.join(" ", said);
    }

    /** A mass that breaks already breaks by more, which is no new finding. */
    private static String nothingNew(Correction offer, BuildReview before) {
        boolean heavier = offer.cost().mg() > 0 && before.verdict(Budget.MASS) == Verdict.BREAKS;
        return heavier ? "Breaks nothing new, but adds to a mass that breaks already." : "Breaks nothing.";
    }
}
