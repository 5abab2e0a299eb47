package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.quantity.Figures;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The voltages at which everything on a rail works: what the rail is judged by. A load that says nothing has the rail's own limits; a
 * rail without loads too.
 *
 * @param lowV the highest of the least voltages, and {@code highV} the lowest of the greatest; null = not known
 */
public record RailLimits(@Nullable Double lowV, @Nullable Double highV) {

    public static RailLimits of(Build build, Rail rail) {
        Double low = own(build, rail, load -> load.minV() == null ? rail.minV() : load.minV())
                .max(Double::compare)
                .orElse(rail.minV());
        Double high = own(build, rail, load -> load.maxV() == null ? rail.maxV() : load.maxV())
                .min(Double::compare)
                .orElse(rail.maxV());
        return new RailLimits(low, high);
    }

    private static Stream<Double> own(Build build, Rail rail, Function<ElectricalLoad, @Nullable Double> limit) {
        return build.lines().stream()
                .flatMap(line -> line.electrical().stream())
                .filter(load -> rail.code().equals(load.rail()))
                .map(limit)
                .filter(Objects::nonNull);
    }

    /** {@code 4.8 to 5.5 V}, {@code from 4.8 V}, {@code up to 5.5 V}; empty where neither is known. */
    public String words() {
        if (lowV == null) {
            return highV == null ? "" : "up to " + PowerWords.volts(highV);
        }
        return highV == null
                ? "from " + PowerWords.volts(lowV)
                : Figures.number(lowV, 2) + " to " + PowerWords.volts(highV);
    }
}
