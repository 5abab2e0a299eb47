/** Sources, feeds, rails and loads as a network: voltages and currents solved, and every element held against its rating. */
@NullMarked
package dev.ledgerwing.core.power.network;

import org.jspecify.annotations.NullMarked;
