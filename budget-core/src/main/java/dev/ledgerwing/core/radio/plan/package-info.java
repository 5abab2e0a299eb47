/** The exact planner: which switched functions may share a channel, in which order of states along the pulse. */
@NullMarked
package dev.ledgerwing.core.radio.plan;

import org.jspecify.annotations.NullMarked;
