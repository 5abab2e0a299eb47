package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.build.Element;
import dev.ledgerwing.web.support.Slug;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Puts elements in the place of those with the same id, or behind the others. */
public final class Elements {

    /** The last step of the address of a form for something new. */
    public static final String NEW = "new";

    private static final int LONGEST_STEM = 36;

    private Elements() {}

    public static <E extends Element> List<E> with(List<E> elements, E put) {
        List<E> changed = new ArrayList<>(elements);
        for (int i = 0; i < changed.size(); i++) {
            if (changed.get(i).id().equals(put.id())) {
                changed.set(i, put);
                return changed;
            }
        }
        changed.add(put);
        return changed;
    }

    public static <E extends Element> List<E> without(List<E> elements, String id) {
        return elements.stream().filter(element -> !element.id().equals(id)).toList();
    }

    public static <E extends Element> @Nullable E find(List<E> elements, @Nullable String id) {
        return elements.stream()
                .filter(element -> element.id().equals(id))
                .findFirst()
                .orElse(null);
    }

    /** A code made of a name, that none of the elements has. */
    public static String freshCode(String name, String unless, List<? extends Element> elements) {
        String made = Slug.of(name, LONGEST_STEM);
        String stem = made.isEmpty() ? unless : made;
        String code = stem;
        for (int i = 2; find(elements, code) != null; i++) {
            code = stem + "-" + i;
        }
        return code;
    }

    /** The same, and none that an address has another meaning for. */
    public static String freshAddress(String name, String unless, List<? extends Element> elements) {
        String code = freshCode(name, unless, elements);
        return code.equals(NEW) ? freshCode(unless + " " + NEW, unless, elements) : code;
    }
}
