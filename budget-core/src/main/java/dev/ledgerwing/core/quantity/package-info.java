/** Exact masses and lengths, the units people type, and the one way numbers are written out. */
@NullMarked
package dev.ledgerwing.core.quantity;

import org.jspecify.annotations.NullMarked;
