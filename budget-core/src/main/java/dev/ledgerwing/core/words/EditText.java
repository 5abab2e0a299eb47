package dev.ledgerwing.core.words;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One step of a change in words.
 *
 * @param what the kind of thing: {@code part}, {@code load case}, {@code mass budget}
 * @param name what people call it; empty for what is there only once
 * @param line id of the part line it is about, if it is about one
 * @param summary what was added or removed; empty for a change
 * @param fields what differs; none unless something was changed
 */
public record EditText(
        Kind kind, String what, String name, @Nullable String line, String summary, List<FieldText> fields) {

    /** What became of it. */
    public enum Kind {
        ADDED("added"),
        REMOVED("removed"),
        CHANGED("changed"),
        /** It stands elsewhere in the order of the record, and is else as it was. */
        REORDERED("moved in the list");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public EditText {
        fields = List.copyOf(fields);
    }
}
