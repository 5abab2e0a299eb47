/** What the tests of this module share. */
@NullMarked
package dev.ledgerwing.report;

import org.jspecify.annotations.NullMarked;
