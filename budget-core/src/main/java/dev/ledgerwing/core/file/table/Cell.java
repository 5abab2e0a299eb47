package dev.ledgerwing.core.file.table;

/** One cell, rows and columns counted from 1. */
record Cell(int row, int column, String text) {

    private static final int LONGEST_QUOTED = 60;

    boolean isFilled() {
        return !text.isEmpty();
    }

    /** The text in quotation marks, on one line and shortened, for a sentence. */
    String quoted() {
        return quoted(text);
    }

    static String quoted(String text) {
        String line = text.replace('\n', ' ');
        return "“" + (line.length() <= LONGEST_QUOTED ? line : line.substring(0, LONGEST_QUOTED) + "…") + "”";
    }
}
