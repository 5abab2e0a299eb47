package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Stream;

/** What single failures say about a supply. */
public final class FailureFindings {

    /** Of each redundant rail, and one of all functions that the flight hangs on. */
    public static final String SINGLE_FAILURE = "power.single-failure";

    /** Of what is overloaded by a failure only. */
    public static final String OVERLOAD = "power.failure-overload";

    private FailureFindings() {}

    /** Redundant rails, functions, overloads; none of a supply in which nothing can fail or nothing hangs. */
    public static List<Finding> of(FailureTable table) {
        if (table.rows().isEmpty() || table.statement().loads().isEmpty()) {
            return List.of();
        }
        return Stream.of(
                        new RedundantRule(table).findings(),
                        new FunctionRule(table).findings(),
                        new OverloadRule(table).findings())
                .flatMap(findings -> findings)
                .toList();
    }

    static Finding finding(Verdict verdict, String subject, String sentence) {
        return new Finding(
                SINGLE_FAILURE, Budget.POWER, verdict, subject, null, null, null, null, "", sentence, List.of());
    }

    static Finding amperes(Verdict verdict, Overload overload, String sentence) {
        double left = overload.ratingA() - overload.afterA();
        return new Finding(
                OVERLOAD,
                Budget.POWER,
                verdict,
                overload.name(),
                null,
                overload.afterA(),
                overload.ratingA(),
                left,
                "A",
                sentence,
                List.of());
    }
}
