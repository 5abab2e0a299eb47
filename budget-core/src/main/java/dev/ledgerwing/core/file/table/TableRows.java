package dev.ledgerwing.core.file.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Cuts a text into rows of cells. Blank rows are left out, but counted. */
final class TableRows {

    private TableRows() {}

    static List<TableRow> all(String text, char delimiter) throws TableRefused {
        List<TableRow> rows = new ArrayList<>();
        int number = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format(delimiter))) {
            for (Iterator<CSVRecord> records = parser.iterator(); records.hasNext(); number++) {
                CSVRecord cells = records.next();
                requireFewColumns(number, cells);
                addUnlessBlank(rows, row(number, cells));
                requireFewRows(rows);
            }
        } catch (IOException | UncheckedIOException unclosed) {
            throw new TableRefused("A quotation mark that opens a cell of row " + number
                    + " is never closed, so the rows after it cannot be told apart.");
        }
        return rows;
    }

    /** The rows among the first {@code most} that hold something, as far as they can be read: enough to find headings in. */
    static List<TableRow> first(String text, char delimiter, int most) {
        List<TableRow> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format(delimiter))) {
            Iterator<CSVRecord> records = parser.iterator();
            for (int number = 1; number <= most && records.hasNext(); number++) {
                addUnlessBlank(rows, row(number, records.next()));
            }
            return rows;
        } catch (IOException | UncheckedIOException unclosed) {
            return rows;
        }
    }

    private static void requireFewColumns(int number, CSVRecord cells) throws TableRefused {
        if (cells.size() > PartsTable.MOST_COLUMNS) {
            throw new TableRefused("Row " + number + " has " + cells.size() + " columns; at most "
                    + PartsTable.MOST_COLUMNS + " are read. Delete the columns that are not needed, empty ones too.");
        }
    }

    private static void requireFewRows(List<TableRow> rows) throws TableRefused {
        // one more for the headings
        if (rows.size() > PartsTable.MOST_ROWS + 1) {
            throw new TableRefused("The table has more than 20 000 rows, the most that is read in one go.");
        }
    }

    private static void addUnlessBlank(List<TableRow> rows, TableRow row) {
        if (!row.isBlank()) {
            rows.add(row);
        }
    }

    private static TableRow row(int number, CSVRecord cells) {
        return new TableRow(
                number,
                cells.stream()
                        .limit(PartsTable.MOST_COLUMNS)
                        .map(TableRows::cleaned)
                        .toList());
    }

    private static String cleaned(String cell) {
        String stripped = Blank.strip(cell);
        return stripped.indexOf('\r') < 0
                ? stripped
                : stripped.replace("\r\n", "\n").replace('\r', '\n');
    }

    private static CSVFormat format(char delimiter) {
        return CSVFormat.Builder.create()
                .setDelimiter(delimiter)
                .setQuote('"')
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(true)
                .setTrailingData(true)
                .get();
    }
}
