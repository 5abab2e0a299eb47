package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.Pack.Chemistry;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.battery.PackFigures;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.quantity.Figures;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One battery: what it is and what it bears.
 *
 * @param storage voltage to keep it at; empty where no published value is at hand for its chemistry
 */
public record BatteryEntry(
        String name,
        String cells,
        String volts,
        String capacity,
        String usable,
        String continuous,
        String burst,
        String charge,
        String storage) {

    /** Volts of one lithium-polymer or lithium-ion cell that lies unused: published by several makers. */
    static final double STORAGE_V = 3.8;

    static List<BatteryEntry> of(Build build) {
        return build.power().sources().stream().flatMap(BatteryEntry::of).toList();
    }

    private static Stream<BatteryEntry> of(PowerSource source) {
        Pack pack = source.pack();
        if (pack == null) {
            return Stream.of();
        }
        PackFigures figures = PackFigures.of(pack);
        return Stream.of(new BatteryEntry(
                source.name(),
                pack.seriesCells() + " in series, " + pack.parallelCells() + " side by side; " + word(pack.chemistry()),
                Figures.number(figures.fullV(), 2) + " / " + Figures.number(figures.nominalV(), 2) + " / "
                        + PowerWords.volts(figures.emptyV()),
                whole(figures.capacityMah(), "mAh"),
                whole(figures.usableMah(), "mAh"),
                PowerSummary.orNotKnown(figures.continuousA(), "A"),
                PowerSummary.orNotKnown(figures.burstA(), "A"),
                PowerSummary.orNotKnown(figures.maxChargeA(), "A"),
                storage(pack)));
    }

    private static String whole(@Nullable Double value, String unit) {
        return value == null ? "not known" : Figures.number(value, 0) + "\u2009" + unit;
    }

    /** An iron-phosphate cell is full below it, a nickel one far below: none is given for these. */
    private static String storage(Pack pack) {
        return switch (pack.chemistry()) {
            case LITHIUM_POLYMER, LITHIUM_POLYMER_HIGH_VOLTAGE, LITHIUM_ION ->
                PowerWords.volts(STORAGE_V * pack.seriesCells());
            case LITHIUM_IRON_PHOSPHATE, NICKEL_METAL_HYDRIDE, OTHER -> "as its maker says";
        };
    }

    private static String word(Chemistry chemistry) {
        return switch (chemistry) {
            case LITHIUM_POLYMER -> "lithium-polymer";
            case LITHIUM_POLYMER_HIGH_VOLTAGE -> "lithium-polymer, high voltage";
            case LITHIUM_ION -> "lithium-ion";
            case LITHIUM_IRON_PHOSPHATE -> "lithium iron phosphate";
            case NICKEL_METAL_HYDRIDE -> "nickel-metal hydride";
            case OTHER -> "another chemistry";
        };
    }
}
