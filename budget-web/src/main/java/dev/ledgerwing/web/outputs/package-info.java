/** The outputs page: which flight controller has what is needed, what each of its outputs drives, and the forms for both. */
@NullMarked
package dev.ledgerwing.web.outputs;

import org.jspecify.annotations.NullMarked;
