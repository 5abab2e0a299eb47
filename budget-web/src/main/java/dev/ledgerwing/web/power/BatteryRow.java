package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.battery.PackFigures;
import dev.ledgerwing.core.power.charging.Charging;
import dev.ledgerwing.core.power.charging.PackCharge;
import dev.ledgerwing.core.quantity.Figures;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One battery with the limits it is charged by.
 *
 * @param sun what solar cells push into it at most; empty where none charge it
 * @param stop what ends the charging aboard; empty where none charge it
 */
record BatteryRow(
        String code,
        String name,
        String volts,
        String energy,
        String chargeTo,
        String chargeAt,
        String sun,
        String stop) {

    static List<BatteryRow> of(Build build, Charging charging) {
        return build.power().sources().stream()
                .filter(source -> source.kind() == PowerSource.Kind.BATTERY)
                .map(source -> row(source, charging))
                .toList();
    }

    private static BatteryRow row(PowerSource battery, Charging charging) {
        Pack pack = Objects.requireNonNull(battery.pack());
        PackFigures figures = PackFigures.of(pack);
        PackCharge sun = charging.pack(battery.code()).orElse(null);
        return new BatteryRow(
                battery.code(),
                battery.name(),
                Figures.number(figures.fullV(), 2) + " full, " + Figures.number(figures.nominalV(), 2) + " nominal, "
                        + Electric.volts(figures.emptyV()) + " empty",
                Electric.wattHours(figures.energyWh()) + ", of it " + Electric.wattHours(figures.usableWh())
                        + " to be used",
                Electric.volts(figures.fullV()) + " at most",
                Electric.amperes(figures.maxChargeA()) + " at most",
                sun == null ? "" : Electric.amperes(sun.worstA()) + " from the sun",
                sun == null ? "" : stop(sun));
    }

    private static String stop(PackCharge sun) {
        return sun.hasCutOff() ? "stops by itself when full" : "nothing is recorded that stops it when full";
    }

    /** What holds for the charging of these cells, in plain words. */
    static List<String> cautions(Build build) {
        boolean lithium = build.power().sources().stream()
                .map(PowerSource::pack)
                .filter(Objects::nonNull)
                .anyMatch(BatteryRow::isLithium);
        return lithium
                ? List.of(
                        "Charge lithium cells outside the airframe where it can be done, on a surface that does not"
                                + " burn, and stay beside them.",
                        "Never charge cells that are swollen, wet, warm from flight, below 0\u2009°C or from a hard"
                                + " landing.",
                        "Balance the cells of a pack with every charge; store them about half full.")
                : List.of();
    }

    private static boolean isLithium(@Nullable Pack pack) {
        return pack != null
                && pack.chemistry() != Pack.Chemistry.NICKEL_METAL_HYDRIDE
                && pack.chemistry() != Pack.Chemistry.OTHER;
    }
}
