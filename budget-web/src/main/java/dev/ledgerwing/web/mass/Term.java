package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * One line of a statement: what, how much, and what there is to say about it.
 *
 * @param note empty where there is nothing to say
 * @param verdict null where it judges nothing
 * @param sum whether it sums up the lines above it
 */
record Term(
        String label, String figure, String note, @Nullable Verdict verdict, boolean sum) {

    static Term plain(String label, String figure, String note) {
        return new Term(label, figure, note, null, false);
    }

    static Term sum(String label, String figure, String note) {
        return new Term(label, figure, note, null, true);
    }

    static Term judged(String label, String figure, String note, @Nullable Verdict verdict) {
        return new Term(label, figure, note, verdict, true);
    }

    /** What nobody can tell yet, and why. */
    static Term notKnown(String label, String why) {
        return new Term(label, "", why, Verdict.UNKNOWN, false);
    }
}
