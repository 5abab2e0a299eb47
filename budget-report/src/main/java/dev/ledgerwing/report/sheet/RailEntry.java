package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.power.network.RailState;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.PowerPictures;
import dev.ledgerwing.report.drawing.RailLimits;
import java.util.List;
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
                allowed(network.network().build(), rail),
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

    private static String allowed(Build build, Rail rail) {
        String limits = RailLimits.of(build, rail).words();
        return limits.isEmpty() ? NOT_KNOWN : limits;
    }

    private static String volts(@Nullable Double volts) {
        return volts == null ? NOT_KNOWN : PowerWords.volts(volts);
    }
}
