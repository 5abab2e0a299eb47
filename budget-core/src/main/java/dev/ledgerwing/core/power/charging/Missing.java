package dev.ledgerwing.core.power.charging;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Collects, in words, what is not recorded. */
final class Missing {

    private final List<String> words = new ArrayList<>();

    private Missing() {}

    static Missing of() {
        return new Missing();
    }

    Missing when(@Nullable Object value, String word) {
        if (value == null) {
            words.add(word);
        }
        return this;
    }

    List<String> words() {
        return List.copyOf(words);
    }
}
