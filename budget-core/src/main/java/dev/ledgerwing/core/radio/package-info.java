/** Which functions the radio carries, on which channels, and what happens when its signal is lost. */
@NullMarked
package dev.ledgerwing.core.radio;

import org.jspecify.annotations.NullMarked;
