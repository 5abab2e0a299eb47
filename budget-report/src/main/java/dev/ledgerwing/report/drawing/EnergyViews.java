package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.power.energy.EnergyShare;
import dev.ledgerwing.core.power.energy.PhaseEnergy;
import dev.ledgerwing.core.power.energy.PowerEnergy;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.EnergyView.PhaseBar;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Makes an {@link EnergyView} of what is drawn phase by phase. */
final class EnergyViews {

    private static final String LOST = "lost in wires, diodes and regulators";

    private final PowerEnergy energy;

    EnergyViews(PowerEnergy energy) {
        this.energy = energy;
    }

    EnergyView view(String airframe) {
        List<String> rails = energy.phases().stream()
                .limit(1)
                .flatMap(phase -> phase.rails().stream().map(EnergyShare::name))
                .toList();
        return new EnergyView(
                airframe,
                Stream.concat(rails.stream(), Stream.of(LOST)).toList(),
                energy.phases().stream().map(this::bar).toList(),
                notes());
    }

    private PhaseBar bar(PhaseEnergy phase) {
        Double minutes = phase.minutes();
        String name = phase.occasion().name();
        if (minutes == null) {
            String mean = phase.meanW() > 0 && isKnown() ? ", " + Figures.number(phase.meanW(), 1) + "\u2009W" : "";
            return new PhaseBar(name + ", minutes not known" + mean, List.of());
        }
        String told = name + ", " + Figures.number(minutes, 1) + "\u2009min";
        return new PhaseBar(told, isKnown() ? parts(phase, minutes) : List.of());
    }

    private static List<Double> parts(PhaseEnergy phase, double minutes) {
        List<Double> parts = new ArrayList<>();
        phase.rails().forEach(rail -> parts.add(rail.energyWh(minutes)));
        parts.add(Math.max(0, phase.lossW() * minutes / 60));
        return parts;
    }

    private boolean isKnown() {
        return energy.endurance().isKnown();
    }

    private List<String> notes() {
        if (energy.endurance().collapsed()) {
            return List.of("A supply gives way on the flight: nothing can be said of the energy.");
        }
        List<String> missing = energy.endurance().missing();
        return missing.isEmpty() ? List.of() : List.of("To be known first: " + String.join("; ", missing) + ".");
    }
}
