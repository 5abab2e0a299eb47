package dev.ledgerwing.core.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Checks that the elements of one build are named apart and refer to what is there; collects every fault. */
final class References {

    private final Map<ElementKind, List<? extends Element>> elements;
    private final List<Problem> problems = new ArrayList<>();

    private References(Map<ElementKind, List<? extends Element>> elements) {
        this.elements = elements;
    }

    /** @throws InvalidBuild naming every fault found */
    static void check(
            Map<ElementKind, List<? extends Element>> elements,
            @Nullable SolarDay day,
            @Nullable RadioLink link,
            FittedBoard fitted) {
        References references = new References(elements);
        elements.forEach(references::namedApart);
        references.lines();
        references.loadCases();
        references.placing();
        references.bookings();
        references.phases();
        references.power();
        references.day(day);
        references.problems.addAll(RadioReferences.problems(elements, link));
        references.outputs(fitted);
        if (!references.problems.isEmpty()) {
            throw new InvalidBuild(references.problems);
        }
    }

    private void namedApart(ElementKind kind, List<? extends Element> elements) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < elements.size(); i++) {
            String id = elements.get(i).id();
            if (!seen.add(id)) {
                add(kind.place(i), "“" + id + "” is used twice among the " + kind.plural());
            }
        }
    }

    private void lines() {
        Set<String> assemblies = ids(ElementKind.ASSEMBLY);
        Set<String> rails = ids(ElementKind.RAIL);
        Set<String> functions = ids(ElementKind.FUNCTION);
        Set<String> phases = ids(ElementKind.PHASE);
        List<PartLine> lines = all(ElementKind.LINE, PartLine.class);
        for (int i = 0; i < lines.size(); i++) {
            PartLine line = lines.get(i);
            String place = ElementKind.LINE.place(i);
            refer(place + ".assembly", line.assembly(), assemblies, "assembly");
            line.serves().forEach(code -> refer(place + ".serves", code, functions, "function"));
            for (ElectricalLoad load : line.electrical()) {
                String rail = load.rail();
                if (rail != null) {
                    refer(place + ".electrical", rail, rails, "rail");
                }
                load.dutyByPhase().keySet().forEach(code -> refer(place + ".electrical", code, phases, "phase"));
            }
        }
    }

    private void loadCases() {
        Set<String> lines = ids(ElementKind.LINE);
        List<LoadCase> loadCases = all(ElementKind.LOAD_CASE, LoadCase.class);
        for (int i = 0; i < loadCases.size(); i++) {
            LoadCase loadCase = loadCases.get(i);
            String place = ElementKind.LOAD_CASE.place(i);
            loadCase.absent().forEach(id -> refer(place + ".absent", id, lines, "part"));
            loadCase.moved().keySet().forEach(id -> refer(place + ".moved", id, lines, "part"));
            loadCase.stowed().forEach(id -> refer(place + ".stowed", id, lines, "part"));
        }
        long designs = loadCases.stream().filter(LoadCase::design).count();
        if (designs != 1) {
            add("loadCases", "exactly one load case must be the design case, there are " + designs);
        }
    }

    private void placing() {
        Set<String> lines = ids(ElementKind.LINE);
        List<Bay> bays = all(ElementKind.BAY, Bay.class);
        for (int i = 0; i < bays.size(); i++) {
            String place = ElementKind.BAY.place(i) + ".holds";
            bays.get(i).holds().forEach(id -> refer(place, id, lines, "part"));
        }
        List<KeepApart> rules = all(ElementKind.KEEP_APART, KeepApart.class);
        for (int i = 0; i < rules.size(); i++) {
            refer(ElementKind.KEEP_APART.place(i) + ".first", rules.get(i).first(), lines, "part");
            refer(ElementKind.KEEP_APART.place(i) + ".second", rules.get(i).second(), lines, "part");
        }
    }

    private void bookings() {
        Set<String> assemblies = ids(ElementKind.ASSEMBLY);
        List<AssemblyBooking> bookings = all(ElementKind.ASSEMBLY_BOOKING, AssemblyBooking.class);
        for (int i = 0; i < bookings.size(); i++) {
            String place = ElementKind.ASSEMBLY_BOOKING.place(i) + ".assembly";
            refer(place, bookings.get(i).assembly(), assemblies, "assembly");
        }
    }

    private void phases() {
        Set<String> phases = ids(ElementKind.PHASE);
        Set<String> loadCases = ids(ElementKind.LOAD_CASE);
        List<Phase> all = all(ElementKind.PHASE, Phase.class);
        for (int i = 0; i < all.size(); i++) {
            Phase phase = all.get(i);
            String place = ElementKind.PHASE.place(i);
            String loadCase = phase.loadCase();
            if (loadCase != null) {
                refer(place + ".loadCase", loadCase, loadCases, "load case");
            }
            phase.next().forEach(code -> refer(place + ".next", code, phases, "phase"));
        }
        if (all.stream().filter(Phase::stretch).count() > 1) {
            add("phases", "only one phase can stretch with the battery");
        }
    }

    private void power() {
        Set<String> rails = ids(ElementKind.RAIL);
        Set<String> ends = new HashSet<>(rails);
        List<PowerSource> sources = all(ElementKind.SOURCE, PowerSource.class);
        for (int i = 0; i < sources.size(); i++) {
            source(sources.get(i), ElementKind.SOURCE.place(i));
            if (!ends.add(sources.get(i).code())) {
                add(
                        ElementKind.SOURCE.place(i) + ".code",
                        "“" + sources.get(i).code() + "” is a rail already: a feed could not tell them apart");
            }
        }
        List<Feed> feeds = all(ElementKind.FEED, Feed.class);
        for (int i = 0; i < feeds.size(); i++) {
            refer(ElementKind.FEED.place(i) + ".from", feeds.get(i).from(), ends, "source or rail");
            refer(ElementKind.FEED.place(i) + ".to", feeds.get(i).to(), rails, "rail");
        }
    }

    private void source(PowerSource source, String place) {
        String part = source.part();
        if (part != null) {
            refer(place + ".part", part, ids(ElementKind.LINE), "part");
        }
        SolarArray array = source.array();
        String stop = array == null ? null : array.stopFunction();
        if (stop != null) {
            refer(place + ".array.stopFunction", stop, ids(ElementKind.FUNCTION), "function");
        }
    }

    private void day(@Nullable SolarDay day) {
        String phase = day == null ? null : day.phase();
        if (phase != null) {
            refer("power.day.phase", phase, ids(ElementKind.PHASE), "phase");
        }
    }

    private void outputs(FittedBoard fitted) {
        Set<String> lines = ids(ElementKind.LINE);
        List<Output> outputs = all(ElementKind.OUTPUT, Output.class);
        for (int i = 0; i < outputs.size(); i++) {
            String place = ElementKind.OUTPUT.place(i) + ".drives";
            outputs.get(i).drives().forEach(driven -> refer(place, driven.line(), lines, "part"));
        }
        if (fitted.board() != null) {
            refer("outputs.fitted.board", fitted.board(), ids(ElementKind.BOARD), "flight controller");
        }
        if (fitted.part() != null) {
            refer("outputs.fitted.part", fitted.part(), lines, "part");
        }
    }

    private void refer(String place, String code, Set<String> known, String what) {
        if (!known.contains(code)) {
            add(place, "there is no " + what + " “" + code + "”");
        }
    }

    private Set<String> ids(ElementKind kind) {
        return elements.getOrDefault(kind, List.of()).stream().map(Element::id).collect(Collectors.toUnmodifiableSet());
    }

    private <E extends Element> List<E> all(ElementKind kind, Class<E> type) {
        return elements.getOrDefault(kind, List.of()).stream().map(type::cast).toList();
    }

    private void add(String place, String sentence) {
        problems.add(new Problem(place, sentence));
    }
}
