/** The radio page: which function is on which channel, what that couples, and what to give up where it does not fit. */
@NullMarked
package dev.ledgerwing.web.radio;

import org.jspecify.annotations.NullMarked;
