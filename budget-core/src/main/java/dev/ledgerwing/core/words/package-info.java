/** Says in plain words what a change did to the record. */
@NullMarked
package dev.ledgerwing.core.words;

import org.jspecify.annotations.NullMarked;
