package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One line of the ledger: a number of equal pieces in one assembly.
 *
 * @param id short, given by the desk, never used again
 * @param assembly code of the assembly it belongs to
 * @param serves codes of the functions that depend on it
 */
public record PartLine(
        String id,
        String assembly,
        String name,
        Category category,
        int quantity,
        LineMass mass,
        LinePlace place,
        FitState state,
        Supply supply,
        @Nullable String note,
        List<String> serves,
        List<ElectricalLoad> electrical,
        PortNeeds needs)
        implements Element {

    public PartLine {
        serves = List.copyOf(serves);
        electrical = List.copyOf(electrical);
        Check.id("id", id);
        Check.slug("assembly", assembly);
        Check.name("name", name);
        Check.within("quantity", quantity, 1, 100_000);
        Check.text("note", note, 2000);
        Check.require(
                place.mirroredAtY() == null || quantity % 2 == 0,
                "quantity must be even for a part that is mirrored, was " + quantity);
    }

    /** A line with nothing known but its name and its mass. */
    public static PartLine named(
            String id, String assembly, String name, Category category, int quantity, LineMass mass) {
        return new PartLine(
                id,
                assembly,
                name,
                category,
                quantity,
                mass,
                LinePlace.UNKNOWN,
                FitState.PLANNED,
                Supply.NONE,
                null,
                List.of(),
                List.of(),
                PortNeeds.NONE);
    }

    public boolean isMassKnown() {
        return mass.unitMass() != null;
    }

    /** Quantity times unit mass; null = not known. */
    public @Nullable Mass totalMassOrNull() {
        return isMassKnown() ? totalMass() : null;
    }

    /** Quantity times unit mass; 0 where the mass is not known, so ask {@link #isMassKnown} first. */
    public Mass totalMass() {
        Mass unit = mass.unitMass();
        return unit == null ? Mass.ZERO : unit.times(quantity);
    }

    public PartLine withMass(LineMass changed) {
        return new PartLine(
                id, assembly, name, category, quantity, changed, place, state, supply, note, serves, electrical, needs);
    }

    public PartLine withPlace(LinePlace changed) {
        return new PartLine(
                id, assembly, name, category, quantity, mass, changed, state, supply, note, serves, electrical, needs);
    }

    public PartLine withServes(List<String> changed) {
        return new PartLine(
                id, assembly, name, category, quantity, mass, place, state, supply, note, changed, electrical, needs);
    }

    public PartLine withElectrical(List<ElectricalLoad> changed) {
        return new PartLine(
                id, assembly, name, category, quantity, mass, place, state, supply, note, serves, changed, needs);
    }

    public PartLine withNeeds(PortNeeds changed) {
        return new PartLine(
                id, assembly, name, category, quantity, mass, place, state, supply, note, serves, electrical, changed);
    }
}
