package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One mass held against a limit, on its way to become a finding; null = not known, or no limit. */
record MassAgainst(
        String code,
        String subject,
        @Nullable String line,
        @Nullable Mass measured,
        @Nullable Mass limit) {

    static MassAgainst nothing(String code, String subject) {
        return new MassAgainst(code, subject, null, null, null);
    }

    Finding finding(Verdict verdict, String sentence, List<Remedy> remedies) {
        return new Finding(
                code,
                Budget.MASS,
                verdict,
                subject,
                line,
                grams(measured),
                grams(limit),
                measured == null || limit == null ? null : limit.minus(measured).grams(),
                "g",
                sentence,
                remedies);
    }

    private static @Nullable Double grams(@Nullable Mass mass) {
        return mass == null ? null : mass.grams();
    }
}
