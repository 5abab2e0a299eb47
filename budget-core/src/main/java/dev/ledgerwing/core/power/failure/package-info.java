/** What goes dark when one element fails. */
@NullMarked
package dev.ledgerwing.core.power.failure;

import org.jspecify.annotations.NullMarked;
