package dev.ledgerwing.core.power.solar;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.battery.PackFigures;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The packs of a day as one. Null = not known.
 *
 * @param capacityWh energy from full to empty, at nominal voltage
 * @param usablePercent share of it that may be taken out
 * @param nominalV voltage that directly connected cells are held at; packs of different voltages have none in common
 */
public record DayStore(
        @Nullable Double capacityWh,
        @Nullable Double usablePercent,
        @Nullable Double nominalV) {

    /** All packs among the sources together. */
    public static DayStore of(List<PowerSource> sources) {
        List<PackFigures> packs = sources.stream()
                .flatMap(source -> Stream.ofNullable(source.pack()))
                .map(PackFigures::of)
                .toList();
        Double capacityWh = sum(packs, PackFigures::energyWh);
        Double usableWh = sum(packs, PackFigures::usableWh);
        return new DayStore(
                capacityWh,
                capacityWh == null || usableWh == null ? null : (Double) (100 * usableWh / capacityWh),
                commonV(packs));
    }

    /** Null where one of them is not known, or where there is none. */
    private static @Nullable Double sum(List<PackFigures> packs, Function<PackFigures, @Nullable Double> figure) {
        double sum = 0;
        for (PackFigures pack : packs) {
            Double each = figure.apply(pack);
            if (each == null) {
                return null;
            }
            sum += each;
        }
        return packs.isEmpty() ? null : (Double) sum;
    }

    private static @Nullable Double commonV(List<PackFigures> packs) {
        List<Double> volts =
                packs.stream().map(PackFigures::nominalV).distinct().toList();
        return volts.size() == 1 ? volts.get(0) : null;
    }
}
