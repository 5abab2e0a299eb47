/** Small supplies to calculate with, and tests of everything that is said about a supply. */
@NullMarked
package dev.ledgerwing.core.power;

import org.jspecify.annotations.NullMarked;
