package dev.ledgerwing.core.power.battery;

import dev.ledgerwing.core.build.Pack;
import org.jspecify.annotations.Nullable;

/**
 * A pack as a whole, from its cells: n in series have n times the voltage, m side by side m times the capacity. Null = not known, because
 * something that goes into it is not recorded.
 */
public record PackFigures(Pack pack) {

    private static final double MAH_PER_AH = 1000;
    private static final double MILLIOHM_PER_OHM = 1000;

    public static PackFigures of(Pack pack) {
        return new PackFigures(pack);
    }

    public double fullV() {
        return pack.seriesCells() * CellVoltages.of(pack).fullV();
    }

    public double nominalV() {
        return pack.seriesCells() * CellVoltages.of(pack).nominalV();
    }

    public double emptyV() {
        return pack.seriesCells() * CellVoltages.of(pack).emptyV();
    }

    public @Nullable Double capacityMah() {
        return times(pack.cellCapacityMah(), pack.parallelCells());
    }

    /** Watt-hours at nominal voltage. */
    public @Nullable Double energyWh() {
        return times(capacityMah(), nominalV() / MAH_PER_AH);
    }

    /** What may be taken out before the landing is over. */
    public @Nullable Double usableMah() {
        Double usablePercent = pack.usablePercent();
        return usablePercent == null ? null : times(capacityMah(), usablePercent / 100);
    }

    public @Nullable Double usableWh() {
        return times(usableMah(), nominalV() / MAH_PER_AH);
    }

    /** Inner resistance: in series they add, side by side they share. */
    public @Nullable Double resistanceOhm() {
        return times(pack.cellMilliohm(), (double) pack.seriesCells() / pack.parallelCells() / MILLIOHM_PER_OHM);
    }

    public @Nullable Double continuousA() {
        return atC(pack.continuousC());
    }

    public @Nullable Double burstA() {
        return atC(pack.burstC());
    }

    public @Nullable Double maxChargeA() {
        return atC(pack.maxChargeC());
    }

    /** 1 C empties the pack in 1 h. */
    private @Nullable Double atC(@Nullable Double rate) {
        return rate == null ? null : times(capacityMah(), rate / MAH_PER_AH);
    }

    private static @Nullable Double times(@Nullable Double value, double factor) {
        return value == null ? null : value * factor;
    }
}
