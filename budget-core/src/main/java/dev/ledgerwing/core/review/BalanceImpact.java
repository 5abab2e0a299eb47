package dev.ledgerwing.core.review;

import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.balance.Cg;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Optional;

/** Says where the CG of the design case goes, at basic mass, and how that stands. */
record BalanceImpact(BuildReview before, BuildReview after) {

    /** Empty where nothing was placed before and nothing is placed now. */
    static Optional<ImpactPart> of(BuildReview before, BuildReview after) {
        return new BalanceImpact(before, after).part();
    }

    /** Whether it speaks of this finding: the balance of the design case. */
    static boolean speaksOf(Finding finding, BuildReview after) {
        return finding.code().equals(BalanceFindings.CG)
                && finding.subject().equals(name(after))
                && cg(after).isPresent();
    }

    private Optional<ImpactPart> part() {
        Optional<Cg> then = cg(before);
        Optional<Cg> now = cg(after);
        if (now.isEmpty()) {
            return then.map(cg -> new ImpactPart("Nothing is left to balance.", verdict(after)));
        }
        String moved = then.isEmpty()
                ? "Balances at " + after.units().length(Length.ofMm(now.get().xMm()))
                : moved(now.get().xMm() - then.get().xMm());
        return Optional.of(new ImpactPart(moved + ", " + stands() + ".", verdict(after)));
    }

    private String moved(double aftMm) {
        Length far = Length.ofMm(Math.abs(aftMm));
        if (after.units().lengthNumber(far).equals("0")) {
            return "CG unchanged";
        }
        return "CG moves " + after.units().length(far) + (aftMm > 0 ? " aft" : " forward");
    }

    /** {@code still holds}, {@code now breaks: nose-heavy by 12 mm}. */
    private String stands() {
        Verdict now = verdict(after);
        String stands = (now == verdict(before) ? "still " : "now ") + now.word();
        if (now != Verdict.BREAKS) {
            return stands;
        }
        return stands + finding(after).map(this::excess).orElse("");
    }

    private String excess(Finding finding) {
        Double measured = finding.measured();
        Double limit = finding.limit();
        if (measured == null || limit == null) {
            return "";
        }
        Length beyond = Length.ofMm(Math.abs(measured - limit));
        boolean shows = !after.units().lengthNumber(beyond).equals("0");
        return (measured < limit ? ": nose-heavy" : ": tail-heavy")
                + (shows ? " by " + after.units().length(beyond) : "");
    }

    private static Optional<Cg> cg(BuildReview review) {
        return review.balance().design().cg(MassState.BASIC);
    }

    private static Optional<Finding> finding(BuildReview review) {
        return review.finding(BalanceFindings.CG, name(review));
    }

    private static String name(BuildReview review) {
        return review.balance().design().loadCase().name();
    }

    private static Verdict verdict(BuildReview review) {
        return finding(review).map(Finding::verdict).orElse(Verdict.UNKNOWN);
    }
}
