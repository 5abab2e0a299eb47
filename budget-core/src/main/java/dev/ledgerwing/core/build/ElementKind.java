package dev.ledgerwing.core.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** The kinds of element a build consists of, and where in the record each is kept. */
public enum ElementKind {
    ASSEMBLY(Assembly.class, "assemblies", Build::assemblies),
    LINE(PartLine.class, "lines", Build::lines),
    LOAD_CASE(LoadCase.class, "loadCases", Build::loadCases),
    BAY(Bay.class, "bays", Build::bays),
    KEEP_APART(KeepApart.class, "keepApart", Build::keepApart),
    PHASE(Phase.class, "phases", Build::phases),
    SOURCE(PowerSource.class, "power.sources", build -> build.power().sources()),
    RAIL(Rail.class, "power.rails", build -> build.power().rails()),
    FEED(Feed.class, "power.feeds", build -> build.power().feeds()),
    FUNCTION(RadioFunction.class, "radio.functions", build -> build.radio().functions()),
    CONTROL(Control.class, "radio.controls", build -> build.radio().controls()),
    CHANNEL(Channel.class, "radio.channels", build -> build.radio().channels()),
    NOT_NEEDED(NotNeeded.class, "radio.notNeeded", build -> build.radio().notNeeded()),
    BOARD(Board.class, "outputs.boards", build -> build.outputs().boards()),
    OUTPUT(Output.class, "outputs.assignments", build -> build.outputs().assignments()),
    WEIGH_IN(WeighIn.class, "weighIns", Build::weighIns),
    ASSEMBLY_BOOKING(AssemblyBooking.class, "assemblyBookings", Build::assemblyBookings);

    private final Class<? extends Element> type;
    private final String path;
    private final Function<Build, List<? extends Element>> reader;

    ElementKind(Class<? extends Element> type, String path, Function<Build, List<? extends Element>> reader) {
        this.type = type;
        this.path = path;
        this.reader = reader;
    }

    public Class<? extends Element> type() {
        return type;
    }

    /** The elements of this kind in the order of the record. */
    public List<? extends Element> in(Build build) {
        return reader.apply(build);
    }

    /** Elements by their id, in the order given. */
    static Map<String, Element> byId(List<? extends Element> elements) {
        Map<String, Element> map = new LinkedHashMap<>();
        elements.forEach(element -> map.put(element.id(), element));
        return map;
    }

    /** The word people use for one of them. */
    public String word() {
        return switch (this) {
            case LINE -> "part";
            case KEEP_APART -> "rule to keep apart";
            case BOARD -> "flight controller";
            case NOT_NEEDED -> "combination given up";
            case WEIGH_IN -> "weigh-in";
            case ASSEMBLY_BOOKING -> "booking of the assembly";
            default -> name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    String plural() {
        return switch (this) {
            case ASSEMBLY -> "assemblies";
            case KEEP_APART -> "rules to keep apart";
            case NOT_NEEDED -> "combinations given up";
            case ASSEMBLY_BOOKING -> "bookings of assemblies";
            default -> word() + "s";
        };
    }

    String place(int index) {
        return path + "[" + index + "]";
    }
}
