package dev.ledgerwing.core.words;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Element;
import dev.ledgerwing.core.build.ElementKind;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** What people call the elements that fields refer to; the later record's names before the earlier one's. */
final class ElementNames {

    private final Map<ElementKind, Map<String, String>> names = new EnumMap<>(ElementKind.class);

    ElementNames(Build before, Build after) {
        for (ElementKind kind : ElementKind.values()) {
            Map<String, String> its = new LinkedHashMap<>();
            for (Element element : kind.in(before)) {
                its.put(element.id(), element.name());
            }
            for (Element element : kind.in(after)) {
                its.put(element.id(), element.name());
            }
            names.put(kind, its);
        }
    }

    /** The name of an element; its id or code where neither record has it. */
    String of(ElementKind kind, String id) {
        return names.getOrDefault(kind, Map.of()).getOrDefault(id, id);
    }
}
