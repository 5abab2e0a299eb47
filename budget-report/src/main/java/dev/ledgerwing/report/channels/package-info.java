/** The plan of the channels, or why there is none and what would make one, as text and as JSON. */
@NullMarked
package dev.ledgerwing.report.channels;

import org.jspecify.annotations.NullMarked;
