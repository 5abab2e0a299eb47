/** The first visit: whoever sets the server up creates the first account. */
@NullMarked
package dev.ledgerwing.web.setup;

import org.jspecify.annotations.NullMarked;
