package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.battery.PackFigures;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A source as the solver sees it: an open voltage behind an inner resistance. */
record SourceModel(PowerSource source, Map<Charge, Double> openV) {

    static SourceModel of(PowerSource source) {
        Map<Charge, Double> openV = new EnumMap<>(Charge.class);
        for (Charge charge : Charge.values()) {
            openV.put(charge, openV(source, charge));
        }
        return new SourceModel(source, openV);
    }

    /** Solar cells give nothing in the clouds and at night; a supply without a voltage cannot be reckoned with. */
    boolean gives() {
        return switch (source.kind()) {
            case BATTERY -> true;
            case EXTERNAL -> source.outputV() != null;
            case SOLAR -> false;
        };
    }

    /** Voltage without any current; a supply from outside has one only. */
    double openV(Charge charge) {
        return openV.getOrDefault(charge, 0.0);
    }

    private static double openV(PowerSource source, Charge charge) {
        Pack pack = source.pack();
        Double outputV = source.outputV();
        if (pack == null) {
            return outputV == null ? 0 : outputV;
        }
        PackFigures figures = PackFigures.of(pack);
        return switch (charge) {
            case FULL -> figures.fullV();
            case NOMINAL -> figures.nominalV();
            case EMPTY -> figures.emptyV();
        };
    }

    /** What is not known counts as none. */
    double innerOhm() {
        Pack pack = source.pack();
        Double ohm = pack == null ? null : PackFigures.of(pack).resistanceOhm();
        return ohm == null ? 0 : ohm;
    }

    /** Amperes for as long as it lasts; null = not known. */
    @Nullable
    Double continuousA() {
        Pack pack = source.pack();
        return pack == null ? source.ratingA() : PackFigures.of(pack).continuousA();
    }

    /** Amperes for moments; null = not known. */
    @Nullable
    Double burstA() {
        Pack pack = source.pack();
        return pack == null ? source.ratingA() : PackFigures.of(pack).burstA();
    }
}
