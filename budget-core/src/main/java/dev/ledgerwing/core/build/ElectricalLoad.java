package dev.ledgerwing.core.build;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What a part draws from one rail.
 *
 * @param rail code of the rail it hangs on; null = on none yet
 * @param typicalA typical and {@code peakA} peak current in amperes, of one piece; null = not known
 * @param minV least and {@code maxV} greatest voltage it works at
 * @param dutyByPhase share of each phase it runs, 0 to 1; a phase that is not named counts as 1
 * @param exclusiveGroup loads of one group never draw their peaks together
 * @param lead the wires of its own from the rail to one piece; null = not known
 */
public record ElectricalLoad(
        @Nullable String rail,
        Draws draws,
        @Nullable Double typicalA,
        @Nullable Double peakA,
        @Nullable Double minV,
        @Nullable Double maxV,
        Map<String, Double> dutyByPhase,
        @Nullable String exclusiveGroup,
        @Nullable WireRun lead) {

    /** What stays the same when the voltage changes. */
    public enum Draws {
        CONSTANT_CURRENT,
        CONSTANT_POWER
    }

    public ElectricalLoad {
        dutyByPhase = Collections.unmodifiableMap(new TreeMap<>(dutyByPhase)); // a fixed order
        if (rail != null) {
            Check.slug("rail", rail);
        }
        Check.within("typicalA", typicalA, 0, 1000, " A");
        Check.within("peakA", peakA, 0, 2000, " A");
        Check.within("minV", minV, 0, 1000, " V");
        Check.within("maxV", maxV, 0, 1000, " V");
        dutyByPhase.forEach((phase, duty) -> Check.within("dutyByPhase." + phase, duty, 0, 1, ""));
        Check.text("exclusiveGroup", exclusiveGroup, 40);
    }

    public ElectricalLoad withDutyByPhase(Map<String, Double> changed) {
        return new ElectricalLoad(rail, draws, typicalA, peakA, minV, maxV, changed, exclusiveGroup, lead);
    }
}
