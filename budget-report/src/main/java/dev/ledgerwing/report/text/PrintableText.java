package dev.ledgerwing.report.text;

/** Text that can stand in a page, on paper and on a terminal, whatever somebody put into a name. */
public final class PrintableText {

    private static final int REPLACEMENT = 0xFFFD;

    private PrintableText() {}

    /**
     * {@code text} with the replacement character for everything that XML 1.0 does not allow, for control characters other than tab
     * and line break, and for the marks that turn the direction of the text after them.
     */
    public static String of(String text) {
        StringBuilder printable = new StringBuilder(text.length());
        text.codePoints()
                .map(character -> isPrintable(character) ? character : REPLACEMENT)
                .forEach(printable::appendCodePoint);
        return printable.toString();
    }

    private static boolean isPrintable(int character) {
        if (character == '\n' || character == '\t' || character == '\r') {
            return true;
        }
        boolean control = Character.isISOControl(character);
        boolean halfOfAPair = character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
        boolean noCharacter = (character & 0xFFFE) == 0xFFFE;
        return !control && !halfOfAPair && !noCharacter && !turnsDirection(character);
    }

    /** Embeddings, overrides and isolates of the Unicode Bidirectional Algorithm (UAX 9, table 4). */
    private static boolean turnsDirection(int character) {
        return (character >= 0x202A && character <= 0x202E) || (character >= 0x2066 && character <= 0x2069);
    }
}
