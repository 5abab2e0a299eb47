package dev.ledgerwing.core.build;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** One field of an element or section that differs: its name in the record and its two values. */
public record FieldDifference(
        String field, @Nullable Object before, @Nullable Object after) {

    /** The fields in which {@code after} differs from {@code before}; both of one record type. */
    public static List<FieldDifference> between(Record before, Record after) {
        return RecordFields.differences(before, after);
    }
}
