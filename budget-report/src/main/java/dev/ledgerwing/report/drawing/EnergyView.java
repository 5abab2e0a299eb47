package dev.ledgerwing.report.drawing;

import java.util.List;

/**
 * What the chart of energy by phase shows.
 *
 * @param parts what the bars are stacked of, in their order: rails, and what is lost on the way to them
 * @param notes what is not known, a sentence each
 */
public record EnergyView(String airframe, List<String> parts, List<PhaseBar> phases, List<String> notes) {

    /**
     * One phase.
     *
     * @param told its name and how long it lasts, in words
     * @param energyWh of each part; empty = not known
     */
    public record PhaseBar(String told, List<Double> energyWh) {

        public PhaseBar {
            energyWh = List.copyOf(energyWh);
        }

        double totalWh() {
            return energyWh.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    public EnergyView {
        parts = List.copyOf(parts);
        phases = List.copyOf(phases);
        notes = List.copyOf(notes);
    }

    double longestWh() {
        return phases.stream().mapToDouble(PhaseBar::totalWh).max().orElse(0);
    }

    /** Of one part in all phases. */
    double partWh(int part) {
        return phases.stream()
                .filter(phase -> !phase.energyWh().isEmpty())
                .mapToDouble(phase -> phase.energyWh().get(part))
                .sum();
    }
}
