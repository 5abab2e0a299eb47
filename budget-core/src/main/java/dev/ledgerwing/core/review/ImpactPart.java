package dev.ledgerwing.core.review;

import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * One sentence of what a change does, for the strip above a page.
 *
 * @param verdict how the thing it is about stands now, to be shown as word, shape and colour; null where it judges nothing
 */
public record ImpactPart(String text, @Nullable Verdict verdict) {}
