package dev.ledgerwing.web.desk;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Nature;

/**
 * Something a member wants done: what the record should be, told from the record it was decided on.
 *
 * @param title what is done, in one line
 * @param wanted the record as wanted, made from the record the member saw
 * @param computed worked out from the whole record, so that any newer revision makes it stale
 */
public record Deed(String title, Nature nature, Wanted wanted, boolean computed) {

    private static final int LONGEST_TITLE = 200;

    public Deed {
        title = shortened(title);
    }

    /** Cut to what a revision can hold, never in the middle of a character. */
    private static String shortened(String title) {
        if (title.length() <= LONGEST_TITLE) {
            return title;
        }
        int end = LONGEST_TITLE - 1;
        return title.substring(0, Character.isHighSurrogate(title.charAt(end - 1)) ? end - 1 : end) + "…";
    }

    /** From the record as the member saw it to the record as wanted; refuses with a sentence a builder understands. */
    @FunctionalInterface
    public interface Wanted {

        /**
         * Makes the record as wanted.
         *
         * @throws IllegalArgumentException when the record would not fit together
         */
        Build from(Build seen);
    }

    public static Deed fitting(String title, Wanted wanted) {
        return new Deed(title, Nature.FITTED, wanted, false);
    }

    public static Deed correcting(String title, Wanted wanted) {
        return new Deed(title, Nature.CORRECTED, wanted, false);
    }
}
