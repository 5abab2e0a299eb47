/** The static site: a fleet on a page and its sheets behind it, to be opened from a folder with no server and no network. */
@NullMarked
package dev.ledgerwing.report.site;

import org.jspecify.annotations.NullMarked;
