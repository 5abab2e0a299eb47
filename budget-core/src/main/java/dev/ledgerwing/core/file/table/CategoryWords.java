package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.build.Category;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What kind of thing a part is, from the word in its category column or from its name. */
final class CategoryWords {

    private static final WordList<Category> GIVEN = WordList.load("category-words.txt", Category.class);
    private static final WordList<Category> IN_NAMES = WordList.load("name-words.txt", Category.class);
    private static final Pattern SPACE = Pattern.compile(" ");
    private static final Pattern WHAT_FOR =
            Pattern.compile("(?i),\\s|\\s(?:for|with|of|to|in|on|für|mit|von|zu|zum|zur|im|am)\\s");
    private static final int LEAST_COMPOUND = 5;

    private CategoryWords() {}

    static Optional<Category> given(String text) {
        return GIVEN.meaning(text).or(() -> IN_NAMES.meaning(text));
    }

    /** What the name proposes: its last telling words, before a comma or anything it is "for" or "with". */
    static Optional<Category> proposedBy(String name) {
        String head = WHAT_FOR.split(name, 2)[0];
        List<String> words = SPACE.splitAsStream(Words.plain(head)).toList();
        for (int end = words.size(); end > 0; end--) {
            for (int from = Math.max(0, end - 3); from < end; from++) {
                Optional<Category> category = proposedByWord(String.join(" ", words.subList(from, end)));
                if (category.isPresent()) {
                    return category;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Category> proposedByWord(String word) {
        return IN_NAMES.meaning(word)
                .or(() ->
                        word.endsWith("s") ? IN_NAMES.meaning(word.substring(0, word.length() - 1)) : Optional.empty())
                .or(() -> compound(word));
    }

    /** German words grow at their front: the end of {@code Servokabel} is what it is. */
    private static Optional<Category> compound(String word) {
        return IN_NAMES.entries().entrySet().stream()
                .filter(entry -> entry.getKey().length() >= LEAST_COMPOUND)
                .filter(entry -> word.indexOf(' ') < 0 && word.endsWith(entry.getKey()))
                .map(entry -> entry.getValue().means())
                .findFirst();
    }
}
