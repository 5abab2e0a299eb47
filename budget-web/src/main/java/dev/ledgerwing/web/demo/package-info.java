/** The demo team's airframes, brought in through the desk when an empty server starts. */
@NullMarked
package dev.ledgerwing.web.demo;

import org.jspecify.annotations.NullMarked;
