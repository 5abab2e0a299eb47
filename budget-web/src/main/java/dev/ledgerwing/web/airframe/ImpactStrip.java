package dev.ledgerwing.web.airframe;

import dev.ledgerwing.core.review.ImpactPart;
import dev.ledgerwing.core.verdict.Verdict;
import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a change did, said at once above the page.
 *
 * @param title what was done
 * @param undoNumber the revision that Undo takes back; null where nothing was written
 * @param note said beside it: that it was merged with somebody's change, or that nothing changed
 */
public record ImpactStrip(
        String code,
        String title,
        List<Part> parts,
        @Nullable Integer undoNumber,
        @Nullable String note) implements Serializable {

    /** One sentence, with the verdict of what it is about. */
    public record Part(String text, @Nullable Verdict verdict) implements Serializable {

        static Part of(ImpactPart part) {
            return new Part(part.text(), part.verdict());
        }
    }

    /** The verdict that colours the strip; null where it judges nothing. */
    public @Nullable Verdict worst() {
        Verdict worst = null;
        for (Part part : parts) {
            Verdict verdict = part.verdict();
            if (verdict != null) {
                worst = worst == null ? verdict : worst.worseOf(verdict);
            }
        }
        return worst;
    }

    /** Whether there is something to be put right. */
    public boolean needsFixes() {
        Verdict worst = worst();
        return worst == Verdict.BREAKS || worst == Verdict.UNKNOWN;
    }
}
