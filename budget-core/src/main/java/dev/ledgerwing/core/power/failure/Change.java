package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.LoadFlow;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * One state of the supply before and after a failure.
 *
 * @param newlyDark loads that the failure takes, by their places in the record
 */
record Change(Situation before, Situation after, List<Integer> newlyDark) {

    /** A voltage that falls by less than this has not changed. */
    private static final double NOTHING_V = 0.001;

    static Change of(Situation before, Situation after) {
        List<Integer> newlyDark = IntStream.range(0, before.loads().size())
                .filter(load -> after.loads().get(load).isDark()
                        && !before.loads().get(load).isDark())
                .boxed()
                .toList();
        return new Change(before, after, newlyDark);
    }

    /** Loads that run on with less voltage than before. */
    IntStream lowered() {
        return IntStream.range(0, before.loads().size()).filter(load -> {
            LoadFlow flow = after.loads().get(load);
            return flow.runs()
                    && !flow.isDark()
                    && flow.atLoadV() < before.loads().get(load).atLoadV() - NOTHING_V;
        });
    }

    /** What becomes of a rail, where it is lost: dark, below its own least voltage, or too low for a load on it. */
    Optional<RailChange> of(Rail rail) {
        double beforeV = before.solution().volts(rail.code());
        double afterV = after.solution().volts(rail.code());
        boolean isLost = beforeV > 0 && (afterV <= 0 || fallsBelow(rail.minV(), beforeV, afterV) || takesLoad(rail));
        return isLost
                ? Optional.of(new RailChange(rail, afterV <= 0, beforeV, afterV, before.when()))
                : Optional.empty();
    }

    private static boolean fallsBelow(@Nullable Double minV, double beforeV, double afterV) {
        return minV != null && beforeV >= minV && afterV < minV;
    }

    private boolean takesLoad(Rail rail) {
        return newlyDark.stream()
                .anyMatch(load -> rail.code()
                        .equals(before.loads().get(load).load().load().rail()));
    }
}
