package dev.ledgerwing.web.history;

import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** Which two revisions are to be compared, as typed. */
record CompareForm(String from, String to) {

    CompareForm(@Nullable String from, @Nullable String to) {
        this.from = from == null ? "" : from.strip();
        this.to = to == null ? "" : to.strip();
    }

    /** The newest two. */
    static CompareForm ofNewest(int head) {
        return new CompareForm(Integer.toString(Math.max(1, head - 1)), Integer.toString(head));
    }

    /** The number typed, if it is one of the revisions from 1 to {@code head}. */
    static OptionalInt number(String typed, int head) {
        try {
            int number = Integer.parseInt(typed);
            return number >= 1 && number <= head ? OptionalInt.of(number) : OptionalInt.empty();
        } catch (NumberFormatException notANumber) {
            return OptionalInt.empty();
        }
    }
}
