/** The supply of an airframe as a whole: what every part of it says, and the findings of the power budget. */
@NullMarked
package dev.ledgerwing.core.power;

import org.jspecify.annotations.NullMarked;
