/** A small process with the desk and its database, without a web server, to be killed in tests. */
@NullMarked
package dev.ledgerwing.deskprocess;

import org.jspecify.annotations.NullMarked;
