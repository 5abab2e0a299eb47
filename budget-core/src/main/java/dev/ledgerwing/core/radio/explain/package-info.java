/** Why functions do not fit on the channels, and what would make them fit. */
@NullMarked
package dev.ledgerwing.core.radio.explain;

import org.jspecify.annotations.NullMarked;
