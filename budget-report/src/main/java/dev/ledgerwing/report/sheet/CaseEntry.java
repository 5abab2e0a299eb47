package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.balance.CaseBalance;
import dev.ledgerwing.core.balance.Cg;
import dev.ledgerwing.core.balance.CgUncertainty;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Stream;

/**
 * One load case with where it balances.
 *
 * @param note what goes with its name, in small print
 * @param points at basic and at predicted mass
 */
public record CaseEntry(String name, String note, VerdictMark verdict, List<CasePoint> points) {

    /** Where it balances at one mass. */
    public record CasePoint(
            String state, String mass, String x, String percent, String uncertainty, String y, String z) {}

    private static final String NOT_KNOWN = "not known";

    public CaseEntry {
        points = List.copyOf(points);
    }

    public static CaseEntry of(CaseBalance one, BuildReview review) {
        int unplaced = one.withoutMass().size() + one.withoutStation().size();
        String missing = unplaced == 0 ? "" : unplaced + " not placed: of the rest";
        String design = one.loadCase().design() ? "design load case" : "";
        return new CaseEntry(
                one.loadCase().name(),
                Stream.of(design, missing)
                        .filter(note -> !note.isEmpty())
                        .reduce((first, second) -> first + "; " + second)
                        .orElse(""),
                verdict(one, review),
                Stream.of(MassState.values())
                        .map(state -> point(one, state, review))
                        .toList());
    }

    private static VerdictMark verdict(CaseBalance one, BuildReview review) {
        Verdict verdict = review.findings().stream()
                .filter(finding -> finding.code().equals(BalanceFindings.CG)
                        && finding.subject().equals(one.loadCase().name()))
                .map(finding -> finding.verdict())
                .reduce(Verdict::worseOf)
                .orElse(Verdict.UNKNOWN);
        return one.isFlight() ? VerdictMark.of(verdict) : new VerdictMark("ground", "on the ground");
    }

    private static CasePoint point(CaseBalance one, MassState state, BuildReview review) {
        Figures units = review.units();
        String mass = (one.isKnown() ? "" : "at least ")
                + units.smallMass(one.sum(state).mass());
        Cg cg = one.cg(state).orElse(null);
        if (cg == null) {
            return new CasePoint(state.word(), mass, NOT_KNOWN, "", "", "", "");
        }
        Double percent = review.balance().shape().percentMac(cg.xMm());
        double uncertainty = one.uncertainty(state).map(CgUncertainty::xMm).orElse(0.0);
        return new CasePoint(
                state.word(),
                mass,
                length(cg.xMm(), units),
                percent == null ? "" : Figures.fixed(percent, 1),
                length(2 * uncertainty, units),
                length(cg.yMm(), units),
                length(cg.zMm(), units));
    }

    private static String length(double mm, Figures units) {
        return units.lengthNumber(Length.ofMm(mm));
    }
}
