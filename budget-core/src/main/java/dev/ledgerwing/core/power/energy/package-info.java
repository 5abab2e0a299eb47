/** What is drawn phase by phase, and how long the packs last. */
@NullMarked
package dev.ledgerwing.core.power.energy;

import org.jspecify.annotations.NullMarked;
