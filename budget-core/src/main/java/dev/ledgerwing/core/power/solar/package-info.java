/** Where the sun stands, what solar cells make of it, and the balance of a day. */
@NullMarked
package dev.ledgerwing.core.power.solar;

import org.jspecify.annotations.NullMarked;
