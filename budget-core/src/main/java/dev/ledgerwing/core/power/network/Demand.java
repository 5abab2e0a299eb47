package dev.ledgerwing.core.power.network;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What every load draws on one occasion at its rail's nominal voltage, in amperes of all its pieces. What is not known counts as 0 here:
 * {@link Gaps} says where that is so.
 */
final class Demand {

    private Demand() {}

    static double[] of(Occasion occasion, LoadLevel level, List<RailLoad> loads) {
        double[] amperes = each(occasion, level, loads);
        if (level == LoadLevel.PEAK) {
            excludeEachOther(amperes, each(occasion, LoadLevel.CONTINUOUS, loads), loads);
        }
        return amperes;
    }

    private static double[] each(Occasion occasion, LoadLevel level, List<RailLoad> loads) {
        return loads.stream()
                .mapToDouble(load -> of(load, occasion.duty(load), level))
                .toArray();
    }

    private static double of(RailLoad load, double duty, LoadLevel level) {
        if (duty == 0) {
            return 0;
        }
        double typical = known(load.typicalA());
        return switch (level) {
            case NONE -> 0;
            case ENERGY -> typical * duty;
            case CONTINUOUS -> typical;
            case PEAK -> Math.max(typical, known(load.peakA()));
        };
    }

    private static double known(@Nullable Double amperes) {
        return amperes == null ? 0 : amperes;
    }

    /** Of the loads of one group on one rail only the one that rises most from typical to peak is left at its peak. */
    private static void excludeEachOther(double[] amperes, double[] typical, List<RailLoad> loads) {
        Map<List<String>, Integer> largest = new HashMap<>();
        for (int i = 0; i < amperes.length; i++) {
            List<String> group = group(loads.get(i));
            if (!group.isEmpty()) {
                largest.merge(
                        group,
                        i,
                        (one, other) -> amperes[other] - typical[other] > amperes[one] - typical[one] ? other : one);
            }
        }
        for (int i = 0; i < amperes.length; i++) {
            if (largest.getOrDefault(group(loads.get(i)), i) != i) {
                amperes[i] = typical[i];
            }
        }
    }

    private static List<String> group(RailLoad load) {
        String group = load.load().exclusiveGroup();
        String rail = load.load().rail();
        return group == null || rail == null ? List.of() : List.of(group, rail);
    }
}
