package dev.ledgerwing.core.verdict;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A verdict about one subject of one budget.
 *
 * @param code stable lower-case name of the rule, {@code mass.target}
 * @param subject what it is about, in the builder's words
 * @param line id of the part line it is about, if it is about one
 * @param measured what was measured, limit what it is held against, marginLeft what is left, all three in {@code unit}; null = not known
 * @param sentence one plain sentence a builder understands
 */
public record Finding(
        String code,
        Budget budget,
        Verdict verdict,
        String subject,
        @Nullable String line,
        @Nullable Double measured,
        @Nullable Double limit,
        @Nullable Double marginLeft,
        String unit,
        String sentence,
        List<Remedy> remedies) {

    public Finding {
        remedies = List.copyOf(remedies);
    }
}
