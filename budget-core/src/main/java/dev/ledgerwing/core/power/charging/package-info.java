/** What solar cells do to the packs that they reach: how fast they charge them, how far, and what stops it. */
@NullMarked
package dev.ledgerwing.core.power.charging;

import org.jspecify.annotations.NullMarked;
