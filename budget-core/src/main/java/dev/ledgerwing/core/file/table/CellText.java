package dev.ledgerwing.core.file.table;

import java.util.regex.Pattern;

/** Text for a cell of an export, so that no spreadsheet runs it as a formula. */
public final class CellText {

    private static final Pattern RUNS_AS_FORMULA = Pattern.compile("'*\\s*[=+\\-@\\t\\r\\n＝＋－＠].*", Pattern.DOTALL);

    private CellText() {}

    /**
     * {@code text} with an apostrophe before it when a spreadsheet would run it: when it begins, after any space, with
     * {@code = + - @}, their full-width forms, a tab or a line break. Text that begins so after apostrophes of its own gets one more,
     * so that taking one away gives the text back exactly.
     */
    public static String safe(String text) {
        return RUNS_AS_FORMULA.matcher(text).matches() ? "'" + text : text;
    }

    /** The text that {@link #safe} was given; any other text as it is. */
    static String unprotected(String text) {
        boolean protectedText =
                text.startsWith("'") && RUNS_AS_FORMULA.matcher(text).matches();
        return protectedText ? text.substring(1) : text;
    }
}
