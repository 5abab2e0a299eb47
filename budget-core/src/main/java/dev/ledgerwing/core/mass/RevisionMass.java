package dev.ledgerwing.core.mass;

import dev.ledgerwing.core.quantity.Mass;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** What one revision weighed, and the target it was held against at the time (null = none was set). */
public record RevisionMass(
        int number, Instant moment, @Nullable Mass target, Mass basic, Mass predicted) {}
