package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.Pack.Chemistry;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import org.jspecify.annotations.Nullable;

/** The fields of a battery. */
final class PackFields {

    private static final String OWN_VOLTAGES = "Cells of another kind need their three voltages.";

    private PackFields() {}

    static void show(@Nullable Pack pack, Shown fields) {
        fields.text("chemistry", (pack == null ? Chemistry.LITHIUM_POLYMER : pack.chemistry()).name())
                .text("series", pack == null ? "" : Integer.toString(pack.seriesCells()))
                .text("parallel", pack == null ? "1" : Integer.toString(pack.parallelCells()))
                .amount("capacity", pack == null ? null : pack.cellCapacityMah())
                .amount("continuous", pack == null ? null : pack.continuousC())
                .amount("burst", pack == null ? null : pack.burstC())
                .amount("resistance", pack == null ? null : pack.cellMilliohm())
                .amount("usable", pack == null ? null : pack.usablePercent())
                .amount("charge", pack == null ? null : pack.maxChargeC())
                .amount("full", pack == null ? null : pack.cellFullV())
                .amount("nominal", pack == null ? null : pack.cellNominalV())
                .amount("empty", pack == null ? null : pack.cellEmptyV())
                .tick("cutOff", pack != null && pack.automaticCutOff());
    }

    /** The battery as typed; nothing where something is wrong. */
    static @Nullable Pack pack(Entries entries) {
        Chemistry chemistry = entries.choice("chemistry", Chemistry.values());
        Integer series = entries.needed(
                "series", entries.whole("series", 1, PowerBounds.MOST_CELLS), 1, "Please give how many are in line.");
        Integer parallel = entries.whole("parallel", 1, PowerBounds.MOST_CELLS);
        Double capacity = entries.amount("capacity", PowerBounds.CELL_CAPACITY);
        Double continuous = entries.amount("continuous", PowerBounds.CONTINUOUS_C);
        Double burst = entries.amount("burst", PowerBounds.BURST_C);
        if (continuous != null && burst != null && continuous > burst) {
            entries.trouble("burst", "For moments it gives at least as much as for as long as it lasts.");
        }
        Double resistance = entries.amount("resistance", PowerBounds.CELL_RESISTANCE);
        Double usable = entries.amount("usable", PowerBounds.SHARE);
        Double charge = entries.amount("charge", PowerBounds.CHARGE_C);
        Voltages voltages = Voltages.of(entries, chemistry);
        return entries.areFine()
                ? new Pack(
                        chemistry,
                        series,
                        parallel == null ? 1 : parallel,
                        capacity,
                        continuous,
                        burst,
                        resistance,
                        usable,
                        charge,
                        voltages.fullV(),
                        voltages.nominalV(),
                        voltages.emptyV(),
                        entries.typed().isTicked("cutOff"))
                : null;
    }

    private record Voltages(
            @Nullable Double fullV,
            @Nullable Double nominalV,
            @Nullable Double emptyV) {

        static Voltages of(Entries entries, Chemistry chemistry) {
            Double fullV = voltage("full", chemistry, entries);
            Double nominalV = voltage("nominal", chemistry, entries);
            Double emptyV = voltage("empty", chemistry, entries);
            inOrder("empty", emptyV, nominalV, entries);
            inOrder("nominal", nominalV, fullV, entries);
            if (nominalV == null) {
                inOrder("empty", emptyV, fullV, entries);
            }
            return new Voltages(fullV, nominalV, emptyV);
        }

        private static @Nullable Double voltage(String field, Chemistry chemistry, Entries entries) {
            Double volts = entries.amount(field, PowerBounds.CELL_VOLTAGE);
            if (volts == null && chemistry == Chemistry.OTHER && entries.isFine(field)) {
                entries.trouble(field, OWN_VOLTAGES);
            }
            return volts;
        }

        private static void inOrder(String field, @Nullable Double lower, @Nullable Double higher, Entries entries) {
            if (lower != null && higher != null && lower >= higher) {
                entries.trouble(field, "A full cell has the highest voltage, an empty one the lowest.");
            }
        }
    }
}
