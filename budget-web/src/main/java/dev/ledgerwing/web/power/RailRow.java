package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.ElementLoad;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.RailState;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.PowerPictures;
import dev.ledgerwing.report.drawing.RailLimits;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One rail: what it should have, what it has at worst, and what hangs on it.
 *
 * @param note what feeds it
 * @param free what the element of its feeds that is nearest to its rating has free, and which that is
 * @param wanted its voltage, and between which everything on it works
 * @param verdict the worst of what hangs on it and of what leads to it, as in the drawing
 */
record RailRow(
        String code,
        String name,
        String note,
        String wanted,
        String has,
        String typical,
        String peak,
        String free,
        Verdict verdict) {

    /** In the order of the record. */
    static List<RailRow> of(NetworkStatement network) {
        return network.network().build().power().rails().stream()
                .flatMap(rail -> network.rail(rail.code()).stream())
                .map(state -> row(state, network))
                .toList();
    }

    private static RailRow row(RailState state, NetworkStatement network) {
        Rail rail = state.rail();
        return new RailRow(
                rail.code(),
                rail.name(),
                fedBy(state),
                wanted(network.network().build(), rail),
                state.isFed() ? Electric.range(state.lowestV(), state.highestV()) : "dark",
                Electric.atLeast(state.isWhole(), Electric.amperes(state.typicalA())),
                Electric.atLeast(state.isWhole(), Electric.amperes(state.peakA())),
                free(state.heaviest()),
                PowerPictures.verdict(network, rail));
    }

    private static String wanted(Build build, Rail rail) {
        String limits = RailLimits.of(build, rail).words();
        return Electric.volts(rail.nominalV()) + ", " + (limits.isEmpty() ? Electric.NOT_KNOWN : limits);
    }

    private static String fedBy(RailState state) {
        if (state.feeds().isEmpty()) {
            return "no feed leads here";
        }
        return "fed by " + state.feeds().stream().map(Feed::name).collect(Collectors.joining(", "))
                + (state.rail().redundant() ? "; each must carry it alone" : "");
    }

    private static String free(@Nullable ElementLoad heaviest) {
        Double margin = heaviest == null ? null : heaviest.marginPercent();
        return heaviest == null || margin == null
                ? Electric.NOT_KNOWN
                : Electric.free(margin) + " at " + heaviest.name();
    }
}
