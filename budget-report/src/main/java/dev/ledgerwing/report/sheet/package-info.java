/** Sheets for the bench: what stands on them, and how they become pages for a browser and for paper. */
@NullMarked
package dev.ledgerwing.report.sheet;

import org.jspecify.annotations.NullMarked;
