package dev.ledgerwing.core.build;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What one airframe's build consists of: the record that every budget is computed from. Immutable; refuses, with everything
 * that is wrong, a record whose parts do not fit together.
 *
 * @param bays spaces that parts must stay inside, and {@code keepApart} the parts that must not sit close together
 * @param booking what the scales said of the whole airframe and no line explains; null = nothing booked
 * @param assemblyBookings the same for assemblies that were weighed by themselves, one for each at most
 */
public record Build(
        Airframe airframe,
        MassBudget budget,
        JudgedBy judgedBy,
        Geometry geometry,
        List<Assembly> assemblies,
        List<PartLine> lines,
        List<LoadCase> loadCases,
        List<Bay> bays,
        List<KeepApart> keepApart,
        List<Phase> phases,
        Power power,
        Radio radio,
        Outputs outputs,
        List<WeighIn> weighIns,
        @Nullable Booking booking,
        List<AssemblyBooking> assemblyBookings) {

    public Build {
        assemblies = List.copyOf(assemblies);
        lines = List.copyOf(lines);
        loadCases = List.copyOf(loadCases);
        bays = List.copyOf(bays);
        keepApart = List.copyOf(keepApart);
        phases = List.copyOf(phases);
        weighIns = List.copyOf(weighIns);
        assemblyBookings = List.copyOf(assemblyBookings);
        Map<ElementKind, List<? extends Element>> elements = new EnumMap<>(ElementKind.class);
        elements.put(ElementKind.ASSEMBLY, assemblies);
        elements.put(ElementKind.LINE, lines);
        elements.put(ElementKind.LOAD_CASE, loadCases);
        elements.put(ElementKind.BAY, bays);
        elements.put(ElementKind.KEEP_APART, keepApart);
        elements.put(ElementKind.PHASE, phases);
        elements.put(ElementKind.SOURCE, power.sources());
        elements.put(ElementKind.RAIL, power.rails());
        elements.put(ElementKind.FEED, power.feeds());
        elements.put(ElementKind.FUNCTION, radio.functions());
        elements.put(ElementKind.CONTROL, radio.controls());
        elements.put(ElementKind.CHANNEL, radio.channels());
        elements.put(ElementKind.NOT_NEEDED, radio.notNeeded());
        elements.put(ElementKind.BOARD, outputs.boards());
        elements.put(ElementKind.OUTPUT, outputs.assignments());
        elements.put(ElementKind.WEIGH_IN, weighIns);
        elements.put(ElementKind.ASSEMBLY_BOOKING, assemblyBookings);
        References.check(elements, power.day(), radio.link(), outputs.fitted());
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
                Geometry.NONE,
                List.of(),
                List.of(),
                List.of(LoadCase.everythingAboard()),
                List.of(),
                List.of(),
                List.of(),
                Power.NONE,
                Radio.NONE,
                Outputs.NONE,
                List.of(),
                null,
                List.of());
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

    /** The booking of one assembly. */
    public Optional<Booking> bookingOf(String assembly) {
        return assemblyBookings.stream()
                .filter(booked -> booked.assembly().equals(assembly))
                .map(AssemblyBooking::booking)
                .findFirst();
    }

    /** Every booking, of the airframe and of its assemblies. */
    public List<Booking> bookings() {
        return Stream.concat(
                        Stream.ofNullable(booking), assemblyBookings.stream().map(AssemblyBooking::booking))
                .toList();
    }

    public Build withAirframe(Airframe changed) {
        return with(SectionKind.AIRFRAME, changed);
    }

    public Build withBudget(MassBudget changed) {
        return with(SectionKind.BUDGET, changed);
    }

    public Build withJudgedBy(JudgedBy changed) {
        return with(SectionKind.JUDGED_BY, changed);
    }

    public Build withGeometry(Geometry changed) {
        return with(SectionKind.GEOMETRY, changed);
    }

    public Build withBooking(@Nullable Booking changed) {
        return with(SectionKind.BOOKING, changed);
    }

    public Build withPowerRules(PowerRules changed) {
        return with(SectionKind.POWER_RULES, changed);
    }

    public Build withSolarDay(@Nullable SolarDay changed) {
        return with(SectionKind.SOLAR_DAY, changed);
    }

    public Build withPower(Power changed) {
        BuildParts parts = BuildParts.of(this);
        parts.put(ElementKind.SOURCE, changed.sources());
        parts.put(ElementKind.RAIL, changed.rails());
        parts.put(ElementKind.FEED, changed.feeds());
        parts.put(SectionKind.POWER_RULES, changed.rules());
        parts.put(SectionKind.SOLAR_DAY, changed.day());
        return parts.assemble();
    }

    public Build withLines(List<PartLine> changed) {
        return with(ElementKind.LINE, changed);
    }

    public Build withAssemblies(List<Assembly> changed) {
        return with(ElementKind.ASSEMBLY, changed);
    }

    public Build withLoadCases(List<LoadCase> changed) {
        return with(ElementKind.LOAD_CASE, changed);
    }

    public Build withBays(List<Bay> changed) {
        return with(ElementKind.BAY, changed);
    }

    public Build withKeepApart(List<KeepApart> changed) {
        return with(ElementKind.KEEP_APART, changed);
    }

    public Build withPhases(List<Phase> changed) {
        return with(ElementKind.PHASE, changed);
    }

    public Build withSources(List<PowerSource> changed) {
        return with(ElementKind.SOURCE, changed);
    }

    public Build withRails(List<Rail> changed) {
        return with(ElementKind.RAIL, changed);
    }

    public Build withFeeds(List<Feed> changed) {
        return with(ElementKind.FEED, changed);
    }

    public Build withFunctions(List<RadioFunction> changed) {
        return with(ElementKind.FUNCTION, changed);
    }

    public Build withRadioLink(@Nullable RadioLink changed) {
        return with(SectionKind.RADIO_LINK, changed);
    }

    public Build withControls(List<Control> changed) {
        return with(ElementKind.CONTROL, changed);
    }

    public Build withChannels(List<Channel> changed) {
        return with(ElementKind.CHANNEL, changed);
    }

    public Build withNotNeeded(List<NotNeeded> changed) {
        return with(ElementKind.NOT_NEEDED, changed);
    }

    public Build withRadio(Radio changed) {
        BuildParts parts = BuildParts.of(this);
        parts.put(SectionKind.RADIO_LINK, changed.link());
        parts.put(ElementKind.CONTROL, changed.controls());
        parts.put(ElementKind.FUNCTION, changed.functions());
        parts.put(ElementKind.CHANNEL, changed.channels());
        parts.put(ElementKind.NOT_NEEDED, changed.notNeeded());
        return parts.assemble();
    }

    public Build withBoards(List<Board> changed) {
        return with(ElementKind.BOARD, changed);
    }

    public Build withFittedBoard(FittedBoard changed) {
        return with(SectionKind.FITTED_BOARD, changed);
    }

    public Build withOutputs(List<Output> changed) {
        return with(ElementKind.OUTPUT, changed);
    }

    public Build withWeighIns(List<WeighIn> changed) {
        return with(ElementKind.WEIGH_IN, changed);
    }

    public Build withAssemblyBookings(List<AssemblyBooking> changed) {
        return with(ElementKind.ASSEMBLY_BOOKING, changed);
    }

    private Build with(SectionKind section, @Nullable Record changed) {
        BuildParts parts = BuildParts.of(this);
        parts.put(section, changed);
        return parts.assemble();
    }

    private Build with(ElementKind kind, List<? extends Element> changed) {
        BuildParts parts = BuildParts.of(this);
        parts.put(kind, changed);
        return parts.assemble();
    }
}
