package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.quantity.Figures;
import java.util.ArrayList;
import java.util.List;

/** Says when a load runs: {@code 21 % in Transect; off in Landing; else all the time}. */
final class DutyWords {

    private static final double PERCENT = 100;

    private DutyWords() {}

    static String of(ElectricalLoad load, List<Phase> phases) {
        List<String> shares = new ArrayList<>();
        List<String> off = new ArrayList<>();
        int always = 0;
        for (Phase phase : phases) {
            double duty = load.dutyByPhase().getOrDefault(phase.code(), 1.0);
            if (duty == 0) {
                off.add(phase.name());
            } else if (duty == 1) {
                always++;
            } else {
                shares.add(Figures.percent(duty * PERCENT) + " in " + phase.name());
            }
        }
        if (shares.isEmpty() && off.isEmpty()) {
            return "all the time";
        }
        return joined(shares, off, always);
    }

    private static String joined(List<String> shares, List<String> off, int always) {
        List<String> parts = new ArrayList<>();
        if (!shares.isEmpty()) {
            parts.add(String.join(", ", shares));
        }
        if (!off.isEmpty()) {
            parts.add(always == 0 && shares.isEmpty() ? "always off" : "off in " + String.join(", ", off));
        }
        if (always > 0) {
            parts.add("else all the time");
        }
        return String.join("; ", parts);
    }
}
