/** The build file (JSON) and the parts table (CSV): the only place that knows the libraries for them. */
@NullMarked
package dev.ledgerwing.core.file;

import org.jspecify.annotations.NullMarked;
