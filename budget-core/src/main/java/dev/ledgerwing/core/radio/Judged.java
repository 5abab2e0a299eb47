package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something of the radio that is judged, on its way to become a finding; null = not known, or no limit.
 *
 * @param left what is left of the limit
 */
record Judged(
        String code,
        String subject,
        @Nullable Double measured,
        @Nullable Double limit,
        @Nullable Double left,
        String unit) {

    /** Something that is not measured. */
    static Judged of(String code, String subject) {
        return new Judged(code, subject, null, null, null, "");
    }

    /** Channels held against those that the link has. */
    static Judged channels(String code, @Nullable Integer needed, @Nullable Integer available) {
        return new Judged(
                code,
                "Channels",
                needed == null ? null : needed.doubleValue(),
                available == null ? null : available.doubleValue(),
                needed == null || available == null ? null : (double) (available - needed),
                "channels");
    }

    /** A length of time that must be more than a limit. */
    static Judged microseconds(String code, String subject, double measuredUs, double limitUs) {
        return new Judged(code, subject, measuredUs, limitUs, measuredUs - limitUs, "µs");
    }

    Finding finding(Verdict verdict, String sentence, Remedy... remedies) {
        return new Finding(
                code, Budget.RADIO, verdict, subject, null, measured, limit, left, unit, sentence, List.of(remedies));
    }
}
