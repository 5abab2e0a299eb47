package dev.ledgerwing.core.review;

import dev.ledgerwing.core.outputs.BoardComparison;
import dev.ledgerwing.core.outputs.OutputFindings;
import dev.ledgerwing.core.outputs.PortKind;
import dev.ledgerwing.core.outputs.PortRow;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Says of which connections more or fewer are needed, or to be had, after a change: the worst of them. */
record OutputImpact(BuildReview before, BuildReview after) {

    static Optional<ImpactPart> of(BuildReview before, BuildReview after) {
        return new OutputImpact(before, after).part();
    }

    /** Whether it speaks of this finding: how many connections of the kind are needed of how many. */
    static boolean speaksOf(Finding finding, BuildReview before, BuildReview after) {
        return finding.code().equals(OutputFindings.PORTS)
                && new OutputImpact(before, after)
                        .kind()
                        .filter(kind -> kind.plural().equals(finding.subject()))
                        .isPresent();
    }

    private Optional<ImpactPart> part() {
        return kind().map(kind -> new ImpactPart(sentence(kind), supply(after, kind) == null ? null : verdict(kind)));
    }

    private Optional<PortKind> kind() {
        return Arrays.stream(PortKind.values())
                .filter(kind -> need(before, kind) != need(after, kind) || !same(kind))
                .max((one, other) -> verdict(one).compareTo(verdict(other)));
    }

    private boolean same(PortKind kind) {
        Integer then = supply(before, kind);
        return then == null ? supply(after, kind) == null : then.equals(supply(after, kind));
    }

    private Verdict verdict(PortKind kind) {
        return port(after, kind).map(PortRow::verdict).orElse(Verdict.UNKNOWN);
    }

    /** {@code 16 of 14 outputs needed.}, or {@code 16 outputs needed.} where no board is aboard. */
    private String sentence(PortKind kind) {
        int need = need(after, kind);
        Integer supply = supply(after, kind);
        return supply == null || kind.isBus()
                ? kind.counted(need) + " needed."
                : need + " of " + kind.counted(supply) + " needed.";
    }

    private static int need(BuildReview review, PortKind kind) {
        return review.outputs().need().need(kind);
    }

    private static @Nullable Integer supply(BuildReview review, PortKind kind) {
        return port(review, kind).map(PortRow::supply).orElse(null);
    }

    private static Optional<PortRow> port(BuildReview review, PortKind kind) {
        return review.outputs().aboard().map((BoardComparison aboard) -> aboard.port(kind));
    }
}
