/** The balance budget: planform, centre of gravity in every load case, limits, neutral point, inertia, and what they say. */
@NullMarked
package dev.ledgerwing.core.balance;

import org.jspecify.annotations.NullMarked;
