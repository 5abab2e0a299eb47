package dev.ledgerwing.core.power.charging;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Something of the charging held against a limit, on its way to become a finding; null = not known, or no limit. */
record ChargeAgainst(
        String code,
        String subject,
        @Nullable Double measured,
        @Nullable Double limit,
        @Nullable Double left,
        String unit) {

    static ChargeAgainst nothing(String code, String subject) {
        return new ChargeAgainst(code, subject, null, null, null, "");
    }

    /** Held against a limit that it must not be above. */
    static ChargeAgainst most(String code, String subject, @Nullable Double measured, @Nullable Double limit) {
        Double left = measured == null || limit == null ? null : limit - measured;
        return new ChargeAgainst(code, subject, measured, limit, left, "");
    }

    /** Held against a limit that it must not be below. */
    static ChargeAgainst least(String code, String subject, @Nullable Double measured, @Nullable Double limit) {
        Double left = measured == null || limit == null ? null : measured - limit;
        return new ChargeAgainst(code, subject, measured, limit, left, "");
    }

    ChargeAgainst inA() {
        return new ChargeAgainst(code, subject, measured, limit, left, "A");
    }

    ChargeAgainst inV() {
        return new ChargeAgainst(code, subject, measured, limit, left, "V");
    }

    Finding finding(Verdict verdict, String sentence) {
        return new Finding(
                code, Budget.POWER, verdict, subject, null, measured, limit, left, unit, sentence, List.of());
    }

    static String celsius(double degrees) {
        return Figures.number(degrees, 0) + "\u2009°C";
    }

    /** {@code its a, its b and its c}. */
    static String listed(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
