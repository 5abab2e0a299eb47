/** The one way in for every change: merge, review and append a revision, in one transaction. */
@NullMarked
package dev.ledgerwing.web.desk;

import org.jspecify.annotations.NullMarked;
