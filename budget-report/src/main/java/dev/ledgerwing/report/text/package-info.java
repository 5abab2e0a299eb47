/** Text for terminals and for other programs. */
@NullMarked
package dev.ledgerwing.report.text;

import org.jspecify.annotations.NullMarked;
