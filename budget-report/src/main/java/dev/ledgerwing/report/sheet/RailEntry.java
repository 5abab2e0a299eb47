package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.LoadState;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.power.network.RailState;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.PowerPictures;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One rail in the table of the power sheet.
 *
 * @param allowed what everything on it works at
 */
public record RailEntry(
        String name,
        String note,
        String nominal,
        String solved,
        String allowed,
        String typical,
        String peak,
        String margin,
        VerdictMark verdict) {

    private static final String NOT_KNOWN = "not known";

    static List<RailEntry> of(NetworkStatement network) {
        return network.rails().stream().map(state -> of(state, network)).toList();
    }

    private static RailEntry of(RailState state, NetworkStatement network) {
        Rail rail = state.rail();
        String least = state.isWhole() ? "" : "at least ";
        Double margin = state.marginPercent();
        return new RailEntry(
                rail.name(),
                rail.redundant() ? "each feed alone carries it" : "",
                volts(rail.nominalV()),
                solved(state),
                allowed(state),
                state.isSolved() ? least + PowerWords.amperes(state.typicalA()) : NOT_KNOWN,
                state.isSolved() ? least + PowerWords.amperes(state.peakA()) : NOT_KNOWN,
                margin == null ? NOT_KNOWN : Figures.percent(margin),
                VerdictMark.of(PowerPictures.verdict(network, rail)));
    }

    private static String solved(RailState state) {
        Double low = state.lowestV();
        Double high = state.highestV();
        if (!state.isSolved() || low == null || high == null) {
            return NOT_KNOWN;
        }
        return state.isFed() ? range(low, high) : "none arrives";
    }

    /** {@code 4.91 to 5.08 V}; one figure where both are written alike. */
    private static String range(double low, double high) {
        String least = Figures.number(low, 2);
        return least.equals(Figures.number(high, 2)) ? PowerWords.volts(low) : least + " to " + PowerWords.volts(high);
    }

    /** The highest of the least voltages and the lowest of the greatest; where no load hangs on it, the rail's own. */
    private static String allowed(RailState state) {
        Double low = state.loads().stream()
                .map(LoadState::load)
                .map(load -> load.minV())
                .filter(Objects::nonNull)
                .max(Double::compare)
                .orElse(state.rail().minV());
        Double high = state.loads().stream()
                .map(LoadState::load)
                .map(load -> load.maxV())
                .filter(Objects::nonNull)
                .min(Double::compare)
                .orElse(state.rail().maxV());
        return low == null && high == null
                ? NOT_KNOWN
                : number(low) + " to " + number(high) + (high == null ? "" : "\u2009V");
    }

    private static String number(@Nullable Double volts) {
        return volts == null ? NOT_KNOWN : Figures.number(volts, 2);
    }

    private static String volts(@Nullable Double volts) {
        return volts == null ? NOT_KNOWN : PowerWords.volts(volts);
    }
}
