/** What the parts need of the flight controller against what each candidate has, and which output drives what. */
@NullMarked
package dev.ledgerwing.core.outputs;

import org.jspecify.annotations.NullMarked;
