/** Tests of why functions do not fit on the channels, and of what would make them fit. */
@NullMarked
package dev.ledgerwing.core.radio.explain;

import org.jspecify.annotations.NullMarked;
