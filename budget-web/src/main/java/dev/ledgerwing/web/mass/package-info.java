/** The mass page: what an airframe weighs against its target, where it grows, and the setting of target, ceiling, reserve and stage. */
@NullMarked
package dev.ledgerwing.web.mass;

import org.jspecify.annotations.NullMarked;
