package dev.ledgerwing.core.power.battery;

import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.Pack.Chemistry;
import org.jspecify.annotations.Nullable;

/** Volts of one cell when it is full, in the middle, and when it must not be taken further. */
record CellVoltages(double fullV, double nominalV, double emptyV) {

    /** Those of the chemistry where the pack has none of its own. */
    static CellVoltages of(Pack pack) {
        CellVoltages usual = usual(pack.chemistry());
        return new CellVoltages(
                or(pack.cellFullV(), usual.fullV),
                or(pack.cellNominalV(), usual.nominalV),
                or(pack.cellEmptyV(), usual.emptyV));
    }

    /**
     * Values that several makers print for their cells; full of the high-voltage kind, and those of iron phosphate and of nickel, from
     * memory. Of lithium-ion cells 2.5 to 3.0 V are printed as empty: the lower one is taken, it is the harder one on what hangs on them.
     */
    private static CellVoltages usual(Chemistry chemistry) {
        return switch (chemistry) {
            case LITHIUM_POLYMER -> new CellVoltages(4.20, 3.7, 3.0);
            case LITHIUM_POLYMER_HIGH_VOLTAGE -> new CellVoltages(4.35, 3.8, 3.0);
            case LITHIUM_ION -> new CellVoltages(4.20, 3.6, 2.5);
            case LITHIUM_IRON_PHOSPHATE -> new CellVoltages(3.65, 3.2, 2.5);
            case NICKEL_METAL_HYDRIDE -> new CellVoltages(1.45, 1.2, 1.0);
            case OTHER -> new CellVoltages(Double.NaN, Double.NaN, Double.NaN); // the pack must bring its own
        };
    }

    private static double or(@Nullable Double own, double usual) {
        return own == null ? usual : own;
    }
}
