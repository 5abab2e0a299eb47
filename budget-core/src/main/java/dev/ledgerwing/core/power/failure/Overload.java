package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.power.network.ElementAt;
import org.jspecify.annotations.Nullable;

/**
 * What carries more after a failure than before, and more than it may.
 *
 * @param code of the source, or of the feed that the element is in
 * @param at the element; null for a source
 * @param afterA what it, or one of several side by side, must carry then
 * @param isPeak whether that is a peak, held against the rating for peaks
 * @param isNew whether it carries no more than it may as long as nothing fails, whichever feed carries its rail
 */
public record Overload(
        String code,
        @Nullable ElementAt at,
        String name,
        double beforeA,
        double afterA,
        double ratingA,
        boolean isPeak,
        boolean isNew) {}
