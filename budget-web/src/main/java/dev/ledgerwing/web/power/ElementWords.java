package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.quantity.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Says in a line what a source or an element of a feed is. */
record ElementWords(Figures figures) {

    /** {@code wire, 20 AWG, 220 mm, in a bundle}. */
    String element(FeedElement element) {
        List<String> parts = new ArrayList<>();
        parts.add(PowerWords.word(element.kind()));
        WireRun wire = element.wire();
        if (wire != null) {
            parts.addAll(List.of(
                    gauge(wire.awg()),
                    figures.length(wire.length()),
                    wire.routing() == WireRun.Routing.BUNDLE ? "in a bundle" : "in free air"));
        }
        Regulator regulator = element.regulator();
        if (regulator != null) {
            parts.add(regulator.type() == Regulator.Type.LINEAR ? "linear" : "switching");
            parts.add(Electric.volts(regulator.outputV()));
        }
        if (element.count() > 1) {
            parts.add(element.count() + " side by side"
                    + (element.sharing() == FeedElement.Sharing.JOINED ? ", tied together" : ", a branch each"));
        }
        return String.join(", ", parts);
    }

    /** {@code 20 AWG}, {@code 1/0 AWG}. */
    private static String gauge(int awg) {
        return (awg > 0 ? Integer.toString(awg) : (1 - awg) + "/0") + " AWG";
    }

    String source(PowerSource source) {
        return switch (source.kind()) {
            case BATTERY -> pack(Objects.requireNonNull(source.pack()));
            case SOLAR -> cells(Objects.requireNonNull(source.array()));
            case EXTERNAL ->
                "supply from outside, " + Electric.volts(source.outputV()) + ", up to "
                        + Electric.amperes(source.ratingA());
        };
    }

    private static String pack(Pack pack) {
        return "battery, " + chemistry(pack.chemistry()) + ", " + pack.seriesCells() + " in line"
                + (pack.parallelCells() == 1 ? "" : ", " + pack.parallelCells() + " side by side") + ", capacity "
                + ampereHours(pack.cellCapacityMah(), pack.parallelCells());
    }

    private static String ampereHours(@Nullable Double cellMah, int parallel) {
        return Electric.with("Ah", cellMah == null ? null : cellMah * parallel / 1000, 2);
    }

    private static String cells(SolarArray array) {
        return "solar cells, " + Electric.with("W", array.maxPowerW(), 1)
                + (array.connection() == SolarArray.Connection.TRACKER ? " through a tracker" : " straight on");
    }

    private static String chemistry(Pack.Chemistry chemistry) {
        return switch (chemistry) {
            case LITHIUM_POLYMER -> "lithium polymer";
            case LITHIUM_POLYMER_HIGH_VOLTAGE -> "lithium polymer for a higher voltage";
            case LITHIUM_ION -> "lithium ion";
            case LITHIUM_IRON_PHOSPHATE -> "lithium iron phosphate";
            case NICKEL_METAL_HYDRIDE -> "nickel metal hydride";
            case OTHER -> "other cells";
        };
    }
}
