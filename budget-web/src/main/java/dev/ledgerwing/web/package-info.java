/** The team's server: screens over the records of the builds. */
@NullMarked
package dev.ledgerwing.web;

import org.jspecify.annotations.NullMarked;
