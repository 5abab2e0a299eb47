package dev.ledgerwing.web.tables;

/** Keeps texts short enough for where they go. */
final class Excerpt {

    private static final int LONGEST_ON_A_PAGE = 120;

    private Excerpt() {}

    /** What stands in a cell, for a page. */
    static String of(String text) {
        return of(text, LONGEST_ON_A_PAGE);
    }

    /** At most {@code longest} characters; never half of one that takes two, which no database could store. */
    static String of(String text, int longest) {
        if (text.length() <= longest) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(longest - 2)) ? longest - 2 : longest - 1;
        return text.substring(0, end) + "…";
    }
}
