package dev.ledgerwing.core.review;

import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A finding that is there on one side only, or whose verdict differs. */
public record FindingChange(
        @Nullable Finding before, @Nullable Finding after) {

    /** What became of it. */
    public enum Kind {
        APPEARED,
        DISAPPEARED,
        CHANGED
    }

    public FindingChange {
        if (before == null && after == null) {
            throw new IllegalArgumentException("a finding must be there before or after");
        }
    }

    public Kind kind() {
        if (before == null) {
            return Kind.APPEARED;
        }
        return after == null ? Kind.DISAPPEARED : Kind.CHANGED;
    }

    /** The later of the two there is. */
    public Finding finding() {
        return after == null ? Objects.requireNonNull(before) : after;
    }

    /** Whether things stand worse than before: a worse verdict, or a new finding that does not hold. */
    public boolean isWorse() {
        return verdict(after).compareTo(verdict(before)) > 0;
    }

    /** Whether things stand better than before: a better verdict, or one finding less that did not hold. */
    public boolean isBetter() {
        return verdict(after).compareTo(verdict(before)) < 0;
    }

    /** Where a rule has nothing to say, nothing is wrong. */
    private static Verdict verdict(@Nullable Finding finding) {
        return finding == null ? Verdict.HOLDS : finding.verdict();
    }
}
