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
    PHASE(Phase.class, "phases", Build::phases),
    RAIL(Rail.class, "power.rails", build -> build.power().rails()),
    FUNCTION(RadioFunction.class, "radio.functions", build -> build.radio().functions());

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
        return this == LINE ? "part" : name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    String plural() {
        return this == ASSEMBLY ? "assemblies" : word() + "s";
    }

    String place(int index) {
        return path + "[" + index + "]";
    }
}
