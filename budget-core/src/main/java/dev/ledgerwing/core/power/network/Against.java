package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Something of the network held against a limit, on its way to become a finding; null = not known, or no limit. */
record Against(
        String code,
        String subject,
        @Nullable String line,
        @Nullable Double measured,
        @Nullable Double limit,
        @Nullable Double left,
        String unit) {

    static Against nothing(String code, String subject) {
        return new Against(code, subject, null, null, null, null, "");
    }

    static Against volts(String code, String subject, @Nullable Double measured, @Nullable Double limit, double left) {
        return new Against(code, subject, null, measured, limit, left, "V");
    }

    /** Amperes that must not exceed a limit. */
    static Against amperes(String code, String subject, double measured, @Nullable Double limit) {
        Double left = limit == null ? null : Double.valueOf(limit - measured);
        return new Against(code, subject, null, measured, limit, left, "A");
    }

    static Against percent(String code, String subject, double measured, double limit) {
        return new Against(code, subject, null, measured, limit, limit - measured, "%");
    }

    Against ofLine(String id) {
        return new Against(code, subject, id, measured, limit, left, unit);
    }

    Finding finding(Verdict verdict, String sentence, String... remedies) {
        List<Remedy> all = List.of(remedies).stream()
                .map(each -> new Remedy(each, null, null))
                .toList();
        return new Finding(code, Budget.POWER, verdict, subject, line, measured, limit, left, unit, sentence, all);
    }
}
