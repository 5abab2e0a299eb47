package dev.ledgerwing.core.power.solar;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.SolarArray;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is not known of cells and would be needed for their power. */
record CellGaps(PowerSource source) {

    /** In words: “the efficiency of the tracker of “Wing cells””. */
    List<String> words() {
        return Stream.ofNullable(source.array()).flatMap(this::words).toList();
    }

    private Stream<String> words(SolarArray array) {
        Stream<String> both = Stream.of(
                        gap(array.maxPowerW(), "power at the best point"),
                        gap(array.powerPercentPerC(), "change of power with temperature"))
                .flatMap(Function.identity());
        return Stream.concat(both, array.connection() == SolarArray.Connection.TRACKER ? tracked(array) : tied(array));
    }

    private Stream<String> tracked(SolarArray array) {
        return gap(array.trackerEfficiencyPercent(), "efficiency of the tracker");
    }

    private Stream<String> tied(SolarArray array) {
        return Stream.of(
                        gap(array.maxPowerV(), "voltage at the best point"),
                        gap(array.openCircuitV(), "open-circuit voltage"),
                        gap(array.shortCircuitA(), "short-circuit current"),
                        gap(array.voltagePercentPerC(), "change of voltage with temperature"))
                .flatMap(Function.identity());
    }

    private Stream<String> gap(@Nullable Double value, String what) {
        return value == null ? Stream.of("the " + what + " of “" + source.name() + "”") : Stream.empty();
    }
}
