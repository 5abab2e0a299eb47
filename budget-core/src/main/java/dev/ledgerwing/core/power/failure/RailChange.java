package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.Rail;

/**
 * A rail that a failure takes down, on the occasion on which it comes down lowest.
 *
 * @param isDark whether nothing arrives any more; otherwise it is too low for itself or for a load
 * @param beforeV and {@code afterV} its voltage
 * @param when the phase, in words
 */
public record RailChange(Rail rail, boolean isDark, double beforeV, double afterV, String when) {}
