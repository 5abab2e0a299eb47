package dev.ledgerwing.core.power.solar;

import org.jspecify.annotations.Nullable;

/**
 * A pack that no cells charge, that something is drawn from, and that nothing stands in for.
 *
 * @param lowHour when it holds only what must stay in it, before the 24 hours are over; null = not known
 */
public record UnchargedPack(String name, @Nullable Double lowHour) {}
