/** The parts of an airframe: the table, and adding, editing, moving and removing a part. */
@NullMarked
package dev.ledgerwing.web.parts;

import org.jspecify.annotations.NullMarked;
