/** Forms on single parts of the record: what was typed, what is wrong with it, and the way of it to the desk and back. */
@NullMarked
package dev.ledgerwing.web.forms;

import org.jspecify.annotations.NullMarked;
