/** The supply: where current comes from, on which ways, and what hangs on it. */
@NullMarked
package dev.ledgerwing.web.power;

import org.jspecify.annotations.NullMarked;
