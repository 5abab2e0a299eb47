package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.WeighedAs;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** What the lists of the part form offer, from value to words, in the order to be shown. */
record PartChoices(
        Map<String, String> assemblies,
        Map<String, String> categories,
        Map<String, String> bases,
        Map<String, String> weighings,
        Map<String, String> states) {

    static PartChoices of(Build build) {
        Map<String, String> assemblies = new LinkedHashMap<>();
        build.assemblies().forEach(assembly -> assemblies.put(assembly.code(), assembly.name()));
        assemblies.put("", "a new assembly");
        Map<String, String> categories = new LinkedHashMap<>();
        categories.put("", "please choose");
        categories.putAll(words(Category.values(), Category::title));
        Map<String, String> weighings = new LinkedHashMap<>();
        weighings.put("", "as one piece");
        weighings.putAll(words(WeighedAs.values(), WeighedAs::words));
        return new PartChoices(
                assemblies,
                categories,
                words(Basis.values(), Basis::word),
                weighings,
                words(FitState.values(), FitState::word));
    }

    private static <E extends Enum<E>> Map<String, String> words(E[] values, Function<E, String> word) {
        Map<String, String> words = new LinkedHashMap<>();
        Arrays.stream(values).forEach(value -> words.put(value.name(), word.apply(value)));
        return words;
    }
}
