package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.build.Build;
import java.util.List;

/**
 * Parts tables as people export them from spreadsheets: comma, semicolon or tab, with either decimal mark, in UTF-8, UTF-16
 * or Windows-1252. What is found is never thrown, but said.
 */
public final class PartsTable {

    public static final int MOST_BYTES = 8 * 1024 * 1024;
    public static final int MOST_ROWS = 20_000;
    public static final int MOST_COLUMNS = 200;

    private PartsTable() {}

    /** Reads a table whose first rows hold headings. */
    public static TableReading read(byte[] bytes) {
        return read(bytes, List.of());
    }

    /**
     * Reads a table with columns as a person changed them; the others are as their headings say. So a table without headings
     * can be read too.
     */
    public static TableReading read(byte[] bytes, List<ColumnMeaning> columns) {
        try {
            TableText text = TableText.decode(bytes);
            char delimiter = Delimiters.of(text.text());
            List<TableRow> rows = TableRows.all(text.text(), delimiter);
            return new TableReader(text, delimiter, header(rows, columns)).read(rows, columns);
        } catch (TableRefused refused) {
            return TableReading.refused(refused.sentence());
        }
    }

    /** What stands in each column, also where no headings say so; empty where the file cannot be read at all. */
    public static List<ColumnSample> sample(byte[] bytes) {
        try {
            String text = TableText.decode(bytes).text();
            return ColumnSample.of(text, Delimiters.of(text));
        } catch (TableRefused refused) {
            return List.of();
        }
    }

    /**
     * The parts of a build as a table: UTF-8 with a byte-order mark, commas, masses in grams, stations in millimetres. {@link
     * #read(byte[])} reads them back exactly, but for space around a text; assemblies of the same name become one. Nothing in it runs
     * as a formula.
     */
    public static byte[] write(Build build) {
        return TableWriter.write(build);
    }

    private static Header header(List<TableRow> rows, List<ColumnMeaning> columns) throws TableRefused {
        if (rows.isEmpty()) {
            throw new TableRefused("The file holds no rows.");
        }
        Header header = Header.find(rows).orElse(Header.NONE);
        if (header.row() == 0 && columns.isEmpty()) {
            throw new TableRefused("No header row was found. The first row needs headings such as Part, Quantity and"
                    + " Mass [g]; or say what each column holds.");
        }
        return header;
    }
}
