package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.verdict.Verdict;
import java.util.Optional;

/**
 * The CG of one case at one mass against the band: BREAKS outside, TIGHT inside by less than twice its own standard uncertainty.
 *
 * @param uncertaintyMm u(x)
 */
public record CgAgainstBand(MassState state, Cg cg, double uncertaintyMm, BalanceBand band) {

    /** Empty where nothing is placed at that mass. */
    public static Optional<CgAgainstBand> of(CaseBalance aboard, MassState state, BalanceBand band) {
        return aboard.cg(state)
                .flatMap(cg -> aboard.uncertainty(state).map(u -> new CgAgainstBand(state, cg, u.xMm(), band)));
    }

    /** How far inside the nearer limit; negative outside. */
    public double insideMm() {
        return band.insideMm(cg.xMm());
    }

    public Verdict verdict() {
        if (insideMm() < 0) {
            return Verdict.BREAKS;
        }
        return insideMm() < 2 * uncertaintyMm ? Verdict.TIGHT : Verdict.HOLDS;
    }

    /** Whether the forward limit is the one it is nearest to, or ahead of. */
    public boolean isForward() {
        return band.isNearerForward(cg.xMm());
    }

    public double limitXMm() {
        return band.nearerLimitXMm(cg.xMm());
    }

    CgAgainstBand worseOf(CgAgainstBand other) {
        int worse = verdict().compareTo(other.verdict());
        if (worse == 0) {
            return insideMm() <= other.insideMm() ? this : other;
        }
        return worse > 0 ? this : other;
    }
}
