package dev.ledgerwing.core.power.failure;

import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.ElementLoad;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.SourceLoad;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What may carry no more than its rating.
 *
 * @param at the element; null for a source
 * @param continuousA for as long as it lasts, and {@code peakA} for moments; null = not known
 * @param isOver whether it carries more already while everything is in order
 */
record Rated(
        String code,
        @Nullable ElementAt at,
        String name,
        @Nullable Double continuousA,
        @Nullable Double peakA,
        boolean isOver) {

    private static final double ROUNDING = 1e-9;

    static List<Rated> all(NetworkStatement statement) {
        return Stream.concat(
                        statement.sources().stream().map(Rated::of),
                        statement.elements().stream().map(Rated::of))
                .toList();
    }

    private static Rated of(SourceLoad load) {
        boolean isOver = load.verdict() == Verdict.BREAKS;
        return new Rated(load.source().code(), null, load.source().name(), load.ratingA(), load.peakRatingA(), isOver);
    }

    private static Rated of(ElementLoad load) {
        boolean isOver = load.verdict() == Verdict.BREAKS;
        return new Rated(
                load.feed().code(),
                load.at(),
                load.name(),
                load.rating().continuousA(),
                load.rating().peakA(),
                isOver);
    }

    /** The worse of continuous and peak, where it is more than before and more than it may be. */
    Optional<Overload> overload(Currents before, Currents after) {
        Object key = at == null ? code : at;
        Optional<Overload> peak =
                overload(before.peakA().getOrDefault(key, 0.0), after.peakA().getOrDefault(key, 0.0), peakA, true);
        Optional<Overload> continuous = overload(
                before.continuousA().getOrDefault(key, 0.0),
                after.continuousA().getOrDefault(key, 0.0),
                continuousA,
                false);
        return continuous.isPresent() ? continuous : peak;
    }

    private Optional<Overload> overload(double beforeA, double afterA, @Nullable Double ratingA, boolean isPeak) {
        return ratingA != null && afterA > ratingA * (1 + ROUNDING) && afterA > beforeA * (1 + ROUNDING)
                ? Optional.of(new Overload(code, at, name, beforeA, afterA, ratingA, isPeak, !isOver))
                : Optional.empty();
    }
}
