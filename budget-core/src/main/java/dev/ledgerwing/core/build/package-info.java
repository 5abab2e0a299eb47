/**
 * The record of one airframe's build and its changes: immutable, checked in its constructors. A nested record is one value to
 * the merge (a mass and its basis belong together) unless it is a {@link dev.ledgerwing.core.build.FieldGroup}.
 */
@NullMarked
package dev.ledgerwing.core.build;

import org.jspecify.annotations.NullMarked;
