package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.power.wire.Ampacity;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Whether the leads of every load carry what one piece of it draws, as {@link Ampacity published} for as long as it lasts; moments do not
 * count for a wire.
 */
record LeadRule(NetworkStatement statement) {

    static final String LEAD = "power.lead";

    Stream<Finding> findings() {
        return statement.loads().stream().map(this::of).filter(Objects::nonNull);
    }

    private @Nullable Finding of(LoadState state) {
        WireRun lead = state.load().load().lead();
        Double ofOneA = ofOneA(state);
        return lead == null || ofOneA == null || ofOneA == 0 ? null : of(state, ofOneA, Ampacity.of(lead));
    }

    private @Nullable Finding of(LoadState state, double ofOneA, Ampacity ampacity) {
        String carry = "The leads of " + PowerWords.quoted(state.load().line().name()) + " carry "
                + PowerWords.amperes(ofOneA);
        Double ratingA = ampacity.continuousA();
        Against against = Against.amperes(LEAD, state.load().line().name(), ofOneA, ratingA)
                .ofLine(state.load().line().id());
        if (ratingA == null) {
            return against.finding(
                    Verdict.UNKNOWN, carry + ", and what they may carry is not known: " + ampacity.source() + ".");
        }
        if (ofOneA > ratingA) {
            return against.finding(
                    Verdict.BREAKS, carry + ", more than the " + PowerWords.amperes(ratingA) + " they may.");
        }
        double reservePercent = statement.network().build().power().rules().reserve(FeedElement.Kind.WIRE);
        return ofOneA <= ratingA * (1 - reservePercent / 100) + 1e-9
                ? null
                : against.finding(
                        Verdict.TIGHT,
                        carry + " of the " + PowerWords.amperes(ratingA) + " they may: short of the wanted reserve of "
                                + Figures.percent(reservePercent) + ".");
    }

    /** Typical of one piece, of constant power at the lowest voltage; null = not known, which is said elsewhere, or never runs. */
    private static @Nullable Double ofOneA(LoadState state) {
        Double typicalA = state.load().typicalA();
        Double lowestV = state.lowestAloneV();
        if (typicalA == null || lowestV == null) {
            return null;
        }
        int pieces = state.load().line().quantity();
        return state.load().isConstantPower() && lowestV > 0
                ? state.load().watts(typicalA) / lowestV / pieces
                : typicalA / pieces;
    }
}
