package dev.ledgerwing.core.balance.correction;

import org.jspecify.annotations.Nullable;

/**
 * How a rule of placing stands in one flight case.
 *
 * @param measuredMm distance between two parts, or from the nearest wall of a bay, negative outside; null = no station is known
 */
record PlacedIn(String loadCase, @Nullable Double measuredMm) {}
