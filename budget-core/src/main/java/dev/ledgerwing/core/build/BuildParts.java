package dev.ledgerwing.core.build;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A record taken apart, to be changed in several places before it has to fit together again. */
final class BuildParts {

    private final Map<ElementKind, List<Element>> elements = new EnumMap<>(ElementKind.class);
    private final Map<SectionKind, @Nullable Record> sections = new EnumMap<>(SectionKind.class);

    static BuildParts of(Build build) {
        BuildParts parts = new BuildParts();
        for (ElementKind kind : ElementKind.values()) {
            parts.elements.put(kind, new ArrayList<>(kind.in(build)));
        }
        for (SectionKind section : SectionKind.values()) {
            parts.sections.put(section, section.in(build));
        }
        return parts;
    }

    List<Element> elements(ElementKind kind) {
        return Objects.requireNonNull(elements.get(kind));
    }

    void put(ElementKind kind, List<? extends Element> changed) {
        elements.put(kind, new ArrayList<>(changed));
    }

    void put(SectionKind section, @Nullable Record changed) {
        sections.put(section, changed);
    }

    /** @throws InvalidBuild when the parts do not fit together */
    Build assemble() {
        Booking booking = (Booking) sections.get(SectionKind.BOOKING);
        return new Build(
                (Airframe) required(SectionKind.AIRFRAME),
                (MassBudget) required(SectionKind.BUDGET),
                (JudgedBy) required(SectionKind.JUDGED_BY),
                (Geometry) required(SectionKind.GEOMETRY),
                all(ElementKind.ASSEMBLY, Assembly.class::cast),
                all(ElementKind.LINE, PartLine.class::cast),
                all(ElementKind.LOAD_CASE, LoadCase.class::cast),
                all(ElementKind.BAY, Bay.class::cast),
                all(ElementKind.KEEP_APART, KeepApart.class::cast),
                all(ElementKind.PHASE, Phase.class::cast),
                new Power(
                        all(ElementKind.SOURCE, PowerSource.class::cast),
                        all(ElementKind.RAIL, Rail.class::cast),
                        all(ElementKind.FEED, Feed.class::cast),
                        (PowerRules) required(SectionKind.POWER_RULES),
                        (SolarDay) sections.get(SectionKind.SOLAR_DAY)),
                new Radio(
                        (RadioLink) sections.get(SectionKind.RADIO_LINK),
                        all(ElementKind.CONTROL, Control.class::cast),
                        all(ElementKind.FUNCTION, RadioFunction.class::cast),
                        all(ElementKind.CHANNEL, Channel.class::cast),
                        all(ElementKind.NOT_NEEDED, NotNeeded.class::cast)),
                new Outputs(
                        all(ElementKind.BOARD, Board.class::cast),
                        (FittedBoard) required(SectionKind.FITTED_BOARD),
                        all(ElementKind.OUTPUT, Output.class::cast)),
                all(ElementKind.WEIGH_IN, WeighIn.class::cast),
                booking,
                all(ElementKind.ASSEMBLY_BOOKING, AssemblyBooking.class::cast));
    }

    private Record required(SectionKind section) {
        return Objects.requireNonNull(sections.get(section), () -> section.word() + " is always there");
    }

    private <E> List<E> all(ElementKind kind, Function<Element, E> cast) {
        return elements(kind).stream().map(cast).toList();
    }
}
