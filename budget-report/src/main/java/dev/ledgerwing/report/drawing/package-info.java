/** Drawings of the trade, to scale: the airframe from above with its band and centres of gravity, and its masses along the stations. */
@NullMarked
package dev.ledgerwing.report.drawing;

import org.jspecify.annotations.NullMarked;
