/** Parts tables as people export them (CSV): how one is understood, what of it can be used, how it becomes lines of a build. */
@NullMarked
package dev.ledgerwing.core.file.table;

import org.jspecify.annotations.NullMarked;
