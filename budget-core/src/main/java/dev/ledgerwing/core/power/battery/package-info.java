/** Packs by their cells: volts, capacity, currents. */
@NullMarked
package dev.ledgerwing.core.power.battery;

import org.jspecify.annotations.NullMarked;
