/** What every page of an airframe shares: its title block, the strip that says what a change did, and taking it back. */
@NullMarked
package dev.ledgerwing.web.airframe;

import org.jspecify.annotations.NullMarked;
