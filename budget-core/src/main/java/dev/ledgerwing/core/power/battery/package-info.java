/** Packs by their cells: energy by phase, endurance, charging. */
@NullMarked
package dev.ledgerwing.core.power.battery;

import org.jspecify.annotations.NullMarked;
