/** Walks through the server in a real browser; compiled and run only where Chromium is installed. */
@NullMarked
package dev.ledgerwing.web.walk;

import org.jspecify.annotations.NullMarked;
