/** The power page: the supply with load against rating, what fails with what, energy, and the day in the sun. */
@NullMarked
package dev.ledgerwing.web.power;

import org.jspecify.annotations.NullMarked;
