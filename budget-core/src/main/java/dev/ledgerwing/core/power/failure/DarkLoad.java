package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.power.network.RailLoad;
import java.util.List;

/**
 * A load that a failure takes out.
 *
 * @param lowestV lowest voltage that still arrives at it; 0 = none
 * @param phases in which it should run, by their names
 */
public record DarkLoad(RailLoad load, double lowestV, List<String> phases) {

    public DarkLoad {
        phases = List.copyOf(phases);
    }
}
