package dev.ledgerwing.report.text;

import java.util.ArrayList;
import java.util.List;

/** A page of plain text for a terminal of 80 columns: long text goes on below where it began. */
public final class PlainPage {

    private static final int WIDTH = 80;
    private static final char THIN_SPACE = '\u2009';

    private final StringBuilder text = new StringBuilder();

    public PlainPage line(String line) {
        return hanging("", line);
    }

    public PlainPage blank() {
        text.append('\n');
        return this;
    }

    /** {@code label} with {@code body} beside it; lines of the body below the first are indented as far as the label is long. */
    public PlainPage hanging(String label, String body) {
        String shown = PrintableText.of(label);
        String lead = shown;
        for (String line : wrapped(PrintableText.of(body), WIDTH - length(shown))) {
            text.append((lead + line).stripTrailing()).append('\n');
            lead = " ".repeat(length(shown));
        }
        return this;
    }

    /** {@code text}, filled up with spaces to {@code width} columns. */
    public static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - length(text)));
    }

    private static List<String> wrapped(String body, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : body.split("[ \n\t]+", -1)) {
            if (!line.isEmpty() && length(line.toString()) + 1 + length(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
            breakOff(line, width, lines);
        }
        lines.add(line.toString());
        return lines;
    }

    /** A word longer than a line is broken wherever the line ends. */
    private static void breakOff(StringBuilder line, int width, List<String> lines) {
        while (length(line.toString()) > width) {
            int end = line.offsetByCodePoints(0, width);
            lines.add(line.substring(0, end));
            line.delete(0, end);
        }
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    /** The whole page; figures keep an ordinary space before their unit. */
    @Override
    public String toString() {
        return text.toString().replace(THIN_SPACE, ' ');
    }
}
