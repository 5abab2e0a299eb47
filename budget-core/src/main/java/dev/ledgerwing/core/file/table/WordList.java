package dev.ledgerwing.core.file.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Words and what they stand for, from a resource beside this class: lines of {@code MEANING: word, word}.
 *
 * @param entries by the plain form of the word, in the order of the resource
 */
record WordList<K extends Enum<K>>(Map<String, Entry<K>> entries) {

    /** What a word stands for; a smaller rank stands earlier in the list. */
    record Entry<K>(K means, int rank) {}

    static <K extends Enum<K>> WordList<K> load(String resource, Class<K> type) {
        Map<String, Entry<K>> entries = new LinkedHashMap<>();
        text(resource)
                .lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .forEach(line -> {
                    int colon = line.indexOf(':');
                    K means = Enum.valueOf(type, line.substring(0, colon));
                    for (String word : line.substring(colon + 1).split(",", -1)) {
                        Entry<K> before = entries.put(Words.plain(word), new Entry<>(means, entries.size()));
                        if (before != null && before.means() != means) {
                            throw new IllegalStateException("“" + word + "” stands for two things in " + resource);
                        }
                    }
                });
        return new WordList<>(Collections.unmodifiableMap(entries));
    }

    /** What the whole of {@code text} stands for. */
    Optional<K> meaning(String text) {
        return entry(text).map(Entry::means);
    }

    Optional<Entry<K>> entry(String text) {
        return Optional.ofNullable(entries.get(Words.plain(text)));
    }

    private static String text(String resource) {
        try (InputStream stream = WordList.class.getResourceAsStream(resource)) {
            return new String(Objects.requireNonNull(stream, resource).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
