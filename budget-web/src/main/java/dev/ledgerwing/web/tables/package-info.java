/** Parts tables in and out: how a table is understood, what it would do, importing it as one revision, and exporting the parts. */
@NullMarked
package dev.ledgerwing.web.tables;

import org.jspecify.annotations.NullMarked;
