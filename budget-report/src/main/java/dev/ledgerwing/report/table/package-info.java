/** How a parts table was understood, as text and as JSON. */
@NullMarked
package dev.ledgerwing.report.table;

import org.jspecify.annotations.NullMarked;
