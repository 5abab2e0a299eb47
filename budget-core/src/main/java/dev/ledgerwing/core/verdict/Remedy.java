package dev.ledgerwing.core.verdict;

import dev.ledgerwing.core.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What would put a finding right: one sentence, and its cost in mass (negative saves; null where it has none to speak of).
 *
 * @param line id of the part line to change, if it is about one
 */
public record Remedy(
        String sentence, @Nullable Mass cost, @Nullable String line) {}
