package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * A battery by its cells. What belongs to one cell says so; null = not known.
 *
 * @param cellCapacityMah capacity of one cell, 1 to 1 000 000 mAh; the pack has {@code parallelCells} times as much
 * @param continuousC greatest current for as long as it lasts, as a multiple of the capacity in 1 h; {@code burstC} for moments
 * @param cellMilliohm inner resistance of one cell
 * @param usablePercent share of the capacity that may be taken out before the landing is over
 * @param maxChargeC greatest charging current as a multiple of the capacity in 1 h
 * @param cellFullV voltages of one cell where they differ from those of the chemistry; needed for {@link Chemistry#OTHER}
 * @param automaticCutOff whether something aboard stops the charging by itself when the pack is full
 */
public record Pack(
        Chemistry chemistry,
        int seriesCells,
        int parallelCells,
        @Nullable Double cellCapacityMah,
        @Nullable Double continuousC,
        @Nullable Double burstC,
        @Nullable Double cellMilliohm,
        @Nullable Double usablePercent,
        @Nullable Double maxChargeC,
        @Nullable Double cellFullV,
        @Nullable Double cellNominalV,
        @Nullable Double cellEmptyV,
        boolean automaticCutOff)
        implements FieldGroup {

    /** What the cells are made of. */
    public enum Chemistry {
        LITHIUM_POLYMER,
        LITHIUM_POLYMER_HIGH_VOLTAGE,
        LITHIUM_ION,
        LITHIUM_IRON_PHOSPHATE,
        NICKEL_METAL_HYDRIDE,
        OTHER
    }

    public Pack {
        Check.within("seriesCells", seriesCells, 1, 200);
        Check.within("parallelCells", parallelCells, 1, 200);
        Check.within("cellCapacityMah", cellCapacityMah, 1, 1_000_000, " mAh");
        Check.within("continuousC", continuousC, 0.01, 500, " C");
        Check.within("burstC", burstC, 0.01, 1000, " C");
        Check.within("cellMilliohm", cellMilliohm, 0, 10_000, " mohm");
        Check.within("usablePercent", usablePercent, 1, 100, " %");
        Check.within("maxChargeC", maxChargeC, 0.01, 100, " C");
        Check.within("cellFullV", cellFullV, 0.1, 10, " V");
        Check.within("cellNominalV", cellNominalV, 0.1, 10, " V");
        Check.within("cellEmptyV", cellEmptyV, 0.1, 10, " V");
        Check.require(
                chemistry != Chemistry.OTHER || (cellFullV != null && cellNominalV != null && cellEmptyV != null),
                "cellFullV, cellNominalV and cellEmptyV must be given for cells of another chemistry");
        inOrder("cellEmptyV", cellEmptyV, "cellNominalV", cellNominalV);
        inOrder("cellNominalV", cellNominalV, "cellFullV", cellFullV);
        inOrder("cellEmptyV", cellEmptyV, "cellFullV", cellFullV);
    }

    private static void inOrder(String lowName, @Nullable Double low, String highName, @Nullable Double high) {
        Check.require(low == null || high == null || low < high, lowName + " must be less than " + highName);
    }
}
