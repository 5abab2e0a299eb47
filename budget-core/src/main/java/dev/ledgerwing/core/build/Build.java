package dev.ledgerwing.core.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What one airframe's build consists of: the record that every budget is computed from. Immutable; refuses, with everything
 * that is wrong, a record whose parts do not fit together.
 *
 * @param booking what the scales said and no line explains; null = nothing booked
 */
public record Build(
        Airframe airframe,
        MassBudget budget,
        JudgedBy judgedBy,
        List<Assembly> assemblies,
        List<PartLine> lines,
        List<LoadCase> loadCases,
        List<Phase> phases,
        Power power,
        Radio radio,
        @Nullable Booking booking) {

    public Build {
        assemblies = List.copyOf(assemblies);
        lines = List.copyOf(lines);
        loadCases = List.copyOf(loadCases);
        phases = List.copyOf(phases);
        References.check(Map.of(
                ElementKind.ASSEMBLY,
                assemblies,
                ElementKind.LINE,
                lines,
                ElementKind.LOAD_CASE,
                loadCases,
                ElementKind.PHASE,
                phases,
                ElementKind.RAIL,
                power.rails(),
                ElementKind.FUNCTION,
                radio.functions()));
    }

    /** A new airframe with nothing in it yet. */
    public static Build blank(Airframe airframe, MassBudget budget) {
        return blank(airframe, budget, JudgedBy.OWN_CHOICE);
    }

    /** A new airframe with nothing in it yet, judged by rules of its own. */
    public static Build blank(Airframe airframe, MassBudget budget, JudgedBy judgedBy) {
        return new Build(
                airframe,
                budget,
                judgedBy,
                List.of(),
                List.of(),
                List.of(LoadCase.everythingAboard()),
                List.of(),
                Power.NONE,
                Radio.NONE,
                null);
    }

    public LoadCase designCase() {
        return loadCases.stream().filter(LoadCase::design).findFirst().orElseThrow();
    }

    public Optional<PartLine> line(String id) {
        return lines.stream().filter(line -> line.id().equals(id)).findFirst();
    }

    public Optional<Assembly> assembly(String code) {
        return assemblies.stream()
                .filter(assembly -> assembly.code().equals(code))
                .findFirst();
    }

    public Build withAirframe(Airframe changed) {
        return new Build(changed, budget, judgedBy, assemblies, lines, loadCases, phases, power, radio, booking);
    }

    public Build withBudget(MassBudget changed) {
        return new Build(airframe, changed, judgedBy, assemblies, lines, loadCases, phases, power, radio, booking);
    }

    public Build withLines(List<PartLine> changed) {
        return new Build(airframe, budget, judgedBy, assemblies, changed, loadCases, phases, power, radio, booking);
    }

    public Build withAssemblies(List<Assembly> changed) {
        return new Build(airframe, budget, judgedBy, changed, lines, loadCases, phases, power, radio, booking);
    }

    public Build withBooking(@Nullable Booking changed) {
        return new Build(airframe, budget, judgedBy, assemblies, lines, loadCases, phases, power, radio, changed);
    }
}
