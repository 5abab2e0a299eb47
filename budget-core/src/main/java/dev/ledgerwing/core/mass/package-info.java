/** The mass budget: statement, growth, forecast, and what they say against target and ceiling. */
@NullMarked
package dev.ledgerwing.core.mass;

import org.jspecify.annotations.NullMarked;
