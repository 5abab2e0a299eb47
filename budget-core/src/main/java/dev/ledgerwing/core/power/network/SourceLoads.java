package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.PowerSource;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds the worst that is asked of every source; solar cells are judged elsewhere. */
record SourceLoads(PowerNetwork network, Solutions solutions, Gaps gaps) {

    List<SourceLoad> all() {
        return network.models().stream()
                .filter(model -> model.source().kind() != PowerSource.Kind.SOLAR)
                .map(this::of)
                .toList();
    }

    private SourceLoad of(SourceModel model) {
        String code = model.source().code();
        double continuousA = most(code, LoadLevel.CONTINUOUS);
        double peakA = most(code, LoadLevel.PEAK);
        return new SourceLoad(
                model.source(),
                continuousA,
                peakA,
                model.continuousA(),
                peakRating(model, peakA),
                network.build().power().rules().sourceReserve(),
                !gaps.currents().contains(code),
                !network.feedsFrom(code).isEmpty(),
                solutions.every().stream()
                        .mapToDouble(solution -> solution.volts(code))
                        .min()
                        .orElse(0),
                network.highestV(code),
                solutions.every().stream()
                        .max(Comparator.comparingDouble(solution -> solution.amperes(code)))
                        .map(worst -> worst.occasion().name() + ", packs "
                                + worst.charge().word())
                        .orElse(""));
    }

    /** A pack whose burst nobody recorded may give for moments what it may give for long; beyond that nothing is known. */
    private static @Nullable Double peakRating(SourceModel model, double peakA) {
        Double burstA = model.burstA();
        Double continuousA = model.continuousA();
        return burstA == null && continuousA != null && peakA <= continuousA ? continuousA : burstA;
    }

    private double most(String code, LoadLevel level) {
        return solutions.every().stream()
                .filter(solution -> solution.level() == level)
                .mapToDouble(solution -> solution.amperes(code))
                .max()
                .orElse(0);
    }
}
