package dev.ledgerwing.seed;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The demo fleet, read from the class path. */
public final class SeedFleet {

    private static final List<String> CODES = List.of("curlew", "godwit", "dunlin");
    private static final CSVFormat HISTORY =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private SeedFleet() {}

    /** Every airframe with its whole history, in the order the team names them. */
    public static List<SeedAirframe> airframes() {
        return CODES.stream().map(SeedFleet::airframe).toList();
    }

    /** A spreadsheet export to try the import with: floats that the team would like under the Dunlin. */
    public static byte[] partsTable() {
        return bytes("parts-table/dunlin-floats.csv");
    }

    private static SeedAirframe airframe(String code) {
        try (CSVParser rows = HISTORY.parse(new StringReader(text(code + "/history.csv")))) {
            return new SeedAirframe(
                    code, rows.stream().map(row -> revision(code, row)).toList());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static SeedRevision revision(String code, CSVRecord row) {
        int number = Integer.parseInt(row.get("number"));
        return new SeedRevision(
                number,
                row.get("author"),
                Instant.parse(row.get("moment")),
                row.get("reason"),
                text(String.format(Locale.ROOT, "%s/%02d.json", code, number)));
    }

    private static String text(String path) {
        return new String(bytes(path), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String path) {
        try (InputStream stream = SeedFleet.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException("the demo data lack " + path);
            }
            return stream.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
