package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.build.Element;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Lists to choose from, each from value to words in the order to be shown. */
public final class Choices {

    private Choices() {}

    /** An empty choice first. */
    public static Map<String, String> optional(String empty, Map<String, String> others) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("", empty);
        all.putAll(others);
        return all;
    }

    public static Map<String, String> names(List<? extends Element> elements) {
        Map<String, String> names = new LinkedHashMap<>();
        elements.forEach(element -> names.put(element.id(), element.name()));
        return names;
    }

    public static <E extends Enum<E>> Map<String, String> of(E[] values, Function<E, String> words) {
        Map<String, String> choices = new LinkedHashMap<>();
        Arrays.stream(values).forEach(each -> choices.put(each.name(), words.apply(each)));
        return choices;
    }
}
