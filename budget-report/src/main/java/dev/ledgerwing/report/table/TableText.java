package dev.ledgerwing.report.table;

import dev.ledgerwing.core.file.table.CellNote;
import dev.ledgerwing.core.file.table.TableColumn;
import dev.ledgerwing.core.file.table.TableReading;
import dev.ledgerwing.core.file.table.TableTotal;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.text.PlainPage;
import java.util.List;

/** How a parts table was understood, for people at a terminal. Its problems are said elsewhere, a line for each. */
public final class TableText {

    private static final int NUMBER = 5;
    private static final int HEADING = 22;
    private static final int MEANING = 26;
    private static final int LONGEST_HEADING = 20;

    private final TableReading reading;
    private final PlainPage page = new PlainPage();

    private TableText(TableReading reading) {
        this.reading = reading;
    }

    /** Columns, parts, sums, and what to know about single cells. */
    public static String of(TableReading reading) {
        return new TableText(reading).text();
    }

    /** One problem, with its place. */
    public static String problem(CellNote problem) {
        return place(problem) + ": " + problem.sentence();
    }

    private String text() {
        page.line(reading.encoding() + ", cells parted by " + delimiter() + ", decimal "
                + (reading.decimalMark() == ',' ? "comma" : "point") + ", "
                + (reading.headerRow() == 0 ? "no headings" : "headings in row " + reading.headerRow()));
        page.blank().line("Columns");
        reading.columns().forEach(this::column);
        page.blank().hanging(PlainPage.padded("Parts", NUMBER + 2), parts());
        section("Sums", sums());
        section("Taken for granted", reading.assumed());
        section("To know", toKnow());
        return page.toString();
    }

    private List<String> sums() {
        return reading.totals().stream().map(TableTotal::sentence).toList();
    }

    /** Without what is said of the sums already. */
    private List<String> toKnow() {
        List<String> sums = sums();
        return reading.notices().stream()
                .filter(notice -> !sums.contains(notice.sentence()))
                .map(TableText::problem)
                .toList();
    }

    private String delimiter() {
        return switch (reading.delimiter()) {
            case ',' -> "commas";
            case ';' -> "semicolons";
            case '\t' -> "tabs";
            default -> "“" + reading.delimiter() + "”";
        };
    }

    private void column(TableColumn column) {
        String heading =
                column.header().isBlank() ? "(no heading)" : column.header().replaceAll("\\s+", " ");
        String unit = column.unit() == null ? "" : ", " + column.unit();
        page.hanging(
                PlainPage.padded("  " + column.number(), NUMBER) + PlainPage.padded(shortened(heading), HEADING),
                PlainPage.padded(column.meaning().title() + unit, MEANING).stripTrailing() + " (" + column.why() + ")");
    }

    private static String shortened(String heading) {
        return heading.codePointCount(0, heading.length()) <= LONGEST_HEADING
                ? heading
                : heading.substring(0, heading.offsetByCodePoints(0, LONGEST_HEADING - 1)) + "…";
    }

    private String parts() {
        String known = Figures.METRIC.mass(reading.knownMass());
        long unknown = reading.partsOfUnknownMass();
        return reading.parts().size() + ", together "
                + (unknown == 0 ? known : "at least " + known + "; " + unknown + " of unknown mass")
                + (reading.problems().isEmpty() ? "" : "; rows with a problem are not among them");
    }

    private void section(String title, List<String> sentences) {
        if (!sentences.isEmpty()) {
            page.blank().line(title);
            sentences.forEach(sentence -> page.hanging("  – ", sentence));
        }
    }

    private static String place(CellNote note) {
        return "row " + note.row() + ", column " + note.column();
    }
}
