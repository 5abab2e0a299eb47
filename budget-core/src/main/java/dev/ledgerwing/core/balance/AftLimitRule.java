package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Optional;

/**
 * Whether a declared aft limit lies ahead of the estimated neutral point by the least static margin. Without a neutral point there
 * is nothing to hold it against.
 */
record AftLimitRule(BalanceShape shape) {

    Optional<Finding> finding() {
        BalanceBand declared = shape.declared();
        NeutralPoint neutralPoint = shape.neutralPoint();
        return declared == null || neutralPoint == null
                ? Optional.empty()
                : Optional.of(against(declared, neutralPoint));
    }

    private Finding against(BalanceBand declared, NeutralPoint neutralPoint) {
        double aft = neutralPoint.wing().percentMac(declared.aftXMm());
        double ahead = neutralPoint.percentMac() - aft;
        Verdict verdict = verdict(ahead);
        String at = "The aft limit, " + BalanceWords.percentMac(aft) + ", lies ";
        String sentence = switch (verdict) {
            case BREAKS ->
                at + (ahead < 0 ? BalanceWords.percentMac(-ahead) + " behind" : "at") + " the neutral point, "
                        + BalanceWords.percentMac(neutralPoint.percentMac())
                        + ": an aeroplane that balances there is not stable. ";
            case TIGHT ->
                at + "only " + BalanceWords.percentMac(ahead) + " ahead of the neutral point, less than the "
                        + BalanceWords.percentMac(leastPercent()) + " of static margin you want. ";
            case HOLDS, UNKNOWN -> at + BalanceWords.percentMac(ahead) + " ahead of the neutral point. ";
        };
        return BalanceAgainst.inPercentMac(
                        BalanceFindings.AFT_LIMIT, "Aft limit", aft, neutralPoint.percentMac() - leastPercent())
                .finding(verdict, sentence + neutralPoint.caution());
    }

    private Verdict verdict(double ahead) {
        if (ahead <= 0) {
            return Verdict.BREAKS;
        }
        return ahead < leastPercent() ? Verdict.TIGHT : Verdict.HOLDS;
    }

    /** 0 where no margin is wanted: then the neutral point itself is the limit. */
    private double leastPercent() {
        StaticMargin wanted = shape.geometry().staticMargin();
        return wanted == null ? 0 : wanted.leastPercent();
    }
}
