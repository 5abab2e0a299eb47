package dev.ledgerwing.core.file.table;

/** What counts as nothing around the text of a cell: every kind of space, also those that do not break and have no width. */
final class Blank {

    private Blank() {}

    static String strip(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isBlank(text.charAt(from))) {
            from++;
        }
        while (from < to && isBlank(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    private static boolean isBlank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\u200b' || c == '\ufeff';
    }
}
