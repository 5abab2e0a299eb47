package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Element;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the builder calls the functions, controls and phases of a record, by their codes. */
final class RadioNames {

    private final Map<String, String> functions;
    private final Map<String, String> controls;
    private final Map<String, String> phases;

    private RadioNames(Build build) {
        functions = names(build.radio().functions());
        controls = names(build.radio().controls());
        phases = names(build.phases());
    }

    static RadioNames of(Build build) {
        return new RadioNames(build);
    }

    private static Map<String, String> names(List<? extends Element> elements) {
        return elements.stream().collect(Collectors.toUnmodifiableMap(Element::id, Element::name));
    }

    String function(String code) {
        return functions.getOrDefault(code, code);
    }

    String control(String code) {
        return controls.getOrDefault(code, code);
    }

    String phase(String code) {
        return phases.getOrDefault(code, code);
    }

    String functions(List<String> codes) {
        return all(codes.stream().map(this::function));
    }

    /** {@code in Transect and Approach}, or {@code in every phase} where none is named. */
    String phases(List<String> codes) {
        return codes.isEmpty() ? "in every phase" : "in " + all(codes.stream().map(this::phase));
    }

    /** {@code A, B and C}. */
    static String all(Stream<String> words) {
        List<String> all = words.toList();
        int last = all.size() - 1;
        return last < 1 ? String.join("", all) : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
    }

    /** {@code 1 channel}, {@code 6 channels}. */
    static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    /** Each of some things in words. */
    static <T> String all(List<T> things, Function<T, String> words) {
        return all(things.stream().map(words));
    }
}
