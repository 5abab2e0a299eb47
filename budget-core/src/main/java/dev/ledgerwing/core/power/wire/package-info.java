/** Copper wire by gauge: resistance, current it may carry, mass. */
@NullMarked
package dev.ledgerwing.core.power.wire;

import org.jspecify.annotations.NullMarked;
