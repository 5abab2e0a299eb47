package dev.ledgerwing.core.power.energy;

import dev.ledgerwing.core.build.PowerSource;
import org.jspecify.annotations.Nullable;

/**
 * How long a flight may last as far as one pack goes; of several ways in which packs stand in for each other, the one that asks most of it.
 *
 * @param minutes null = not known; infinite = it does not limit the phase that stretches
 * @param holdsFixedPhases whether the fixed phases and the landing reserve fit into it; false also where that is not known
 */
public record PackEndurance(PowerSource battery, @Nullable Double minutes, boolean holdsFixedPhases) {

    public boolean isKnown() {
        return minutes != null;
    }
}
