/** What every page stands on: security, errors, the clock and the layout. */
@NullMarked
package dev.ledgerwing.web.support;

import org.jspecify.annotations.NullMarked;
