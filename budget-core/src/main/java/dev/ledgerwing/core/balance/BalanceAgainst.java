package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Something of balance held against a limit, on its way to become a finding; null = not known, or no limit. */
record BalanceAgainst(
        String code,
        String subject,
        @Nullable String line,
        @Nullable Double measured,
        @Nullable Double limit,
        @Nullable Double left,
        String unit) {

    static BalanceAgainst nothing(String code, String subject) {
        return new BalanceAgainst(code, subject, null, null, null, null, "mm");
    }

    static BalanceAgainst inMm(String code, String subject, double measuredMm, double limitMm, double leftMm) {
        return new BalanceAgainst(code, subject, null, measuredMm, limitMm, leftMm, "mm");
    }

    static BalanceAgainst inPercentMac(String code, String subject, double measured, @Nullable Double limit) {
        Double left = limit == null ? null : limit - measured;
        return new BalanceAgainst(code, subject, null, measured, limit, left, "% MAC");
    }

    BalanceAgainst ofLine(@Nullable String id) {
        return new BalanceAgainst(code, subject, id, measured, limit, left, unit);
    }

    Finding finding(Verdict verdict, String sentence, Remedy... remedies) {
        return new Finding(
                code, Budget.BALANCE, verdict, subject, line, measured, limit, left, unit, sentence, List.of(remedies));
    }
}
