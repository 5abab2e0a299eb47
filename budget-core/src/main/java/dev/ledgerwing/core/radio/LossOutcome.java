package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.radio.LossRow.Reason;
import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of a function on loss of signal, on its way to become a row.
 *
 * @param goesTo null = not known, or wherever it was
 */
record LossOutcome(Verdict verdict, Reason reason, @Nullable String goesTo, String sentence) {

    static LossOutcome fine(@Nullable String goesTo, String sentence) {
        return new LossOutcome(Verdict.HOLDS, Reason.NOTHING_WRONG, goesTo, sentence);
    }

    static LossOutcome notKnown(Reason reason, String sentence) {
        return new LossOutcome(Verdict.UNKNOWN, reason, null, sentence);
    }

    static LossOutcome breaks(Reason reason, String sentence) {
        return new LossOutcome(Verdict.BREAKS, reason, null, sentence);
    }

    LossOutcome goingTo(String place) {
        return new LossOutcome(verdict, reason, place, sentence);
    }
}
