package dev.ledgerwing.deskprocess;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.file.BuildFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.zip.GZIPInputStream;

/** Reads a database after a kill with nothing but JDBC and holds it against what was acknowledged. */
public final class StoreCheck implements AutoCloseable {

    private final Connection connection;

    public StoreCheck(String url) throws SQLException {
        this.connection = DriverManager.getConnection(url, "sa", "");
    }

    /**
     * Every acknowledged revision is there with its fingerprint, numbers have no gaps, every body matches its fingerprint, and
     * head row and line rows equal the newest document.
     */
    public int holdsEverything(Map<String, Map<Integer, String>> acknowledged) throws Exception {
        everyTableReadsInFull();
        int checked = 0;
        for (Map.Entry<String, Long> airframe : airframes().entrySet()) {
            Map<Integer, String> stored = fingerprints(airframe.getValue());
            assertThat(stored.keySet())
                    .as("numbers of %s without gaps", airframe.getKey())
                    .containsExactlyElementsOf(
                            IntStream.rangeClosed(1, stored.size()).boxed().toList());
            assertThat(stored).containsAllEntriesOf(acknowledged.getOrDefault(airframe.getKey(), Map.of()));
            headAndLinesEqualTheNewestDocument(airframe.getValue(), stored.size());
            checked += stored.size();
        }
        assertThat(airframes().keySet()).containsAll(acknowledged.keySet());
        return checked;
    }

    /** What each revision of an airframe says was done. */
    public Map<Integer, String> titles(String code) throws SQLException {
        Map<Integer, String> titles = new TreeMap<>();
        try (PreparedStatement query = connection.prepareStatement("select r.number, r.title from revision r"
                + " join airframe a on a.id = r.airframe_id where a.code = ?")) {
            query.setString(1, code);
            try (ResultSet rows = query.executeQuery()) {
                while (rows.next()) {
                    titles.put(rows.getInt(1), rows.getString(2));
                }
            }
        }
        return titles;
    }

    private Map<String, Long> airframes() throws SQLException {
        Map<String, Long> codes = new TreeMap<>();
        try (ResultSet rows = connection.createStatement().executeQuery("select code, id from airframe")) {
            while (rows.next()) {
                codes.put(rows.getString(1), rows.getLong(2));
            }
        }
        return codes;
    }

    private Map<Integer, String> fingerprints(long airframe) throws Exception {
        Map<Integer, String> stored = new TreeMap<>();
        try (PreparedStatement query = connection.prepareStatement("select r.number, b.sha256, b.document"
                + " from revision r join revision_body b on b.revision_id = r.id where r.airframe_id = ?")) {
            query.setLong(1, airframe);
            try (ResultSet rows = query.executeQuery()) {
                while (rows.next()) {
                    assertThat(sha256(unpack(rows.getBytes(3))))
                            .as("body of revision %s", rows.getInt(1))
                            .isEqualTo(rows.getString(2));
                    stored.put(rows.getInt(1), rows.getString(2));
                }
            }
        }
        return stored;
    }

    private void headAndLinesEqualTheNewestDocument(long airframe, int newest) throws Exception {
        try (PreparedStatement query = connection.prepareStatement("select a.head_number, a.head_revision_id, r.id,"
                + " a.basic_mg, r.basic_mg, b.document from airframe a join revision r on r.airframe_id = a.id"
                + " join revision_body b on b.revision_id = r.id where a.id = ? and r.number = ?")) {
            query.setLong(1, airframe);
            query.setInt(2, newest);
            try (ResultSet row = query.executeQuery()) {
                assertThat(row.next()).isTrue();
                assertThat(row.getInt(1)).isEqualTo(newest);
                assertThat(row.getLong(2)).isEqualTo(row.getLong(3));
                assertThat(row.getLong(4)).isEqualTo(row.getLong(5));
                Build build = BuildFile.readOwn(unpack(row.getBytes(6)));
                assertThat(lineRows(airframe))
                        .containsExactlyInAnyOrderElementsOf(
                                build.lines().stream().map(StoreCheck::told).toList());
            }
        }
    }

    private static String told(PartLine line) {
        return line.id() + " " + line.name() + " " + line.quantity() + " "
                + (line.mass().unitMass() == null ? "?" : line.mass().unitMass().mg());
    }

    private List<String> lineRows(long airframe) throws SQLException {
        List<String> rows = new ArrayList<>();
        try (PreparedStatement query = connection.prepareStatement(
                "select line_id, name, quantity, unit_mass_mg from line_row where airframe_id = ?")) {
            query.setLong(1, airframe);
            try (ResultSet found = query.executeQuery()) {
                while (found.next()) {
                    String mass = found.getString(4);
                    rows.add(found.getString(1) + " " + found.getString(2) + " " + found.getInt(3) + " "
                            + (mass == null ? "?" : mass));
                }
            }
        }
        return rows;
    }

    private void everyTableReadsInFull() throws SQLException {
        List<String> tables = new ArrayList<>();
        try (ResultSet found = connection.getMetaData().getTables(null, "PUBLIC", "%", new String[] {"BASE TABLE"})) {
            while (found.next()) {
                tables.add(found.getString("TABLE_NAME"));
            }
        }
        assertThat(tables).contains("AIRFRAME", "REVISION", "REVISION_BODY", "LINE_ROW");
        for (String table : tables) {
            try (ResultSet rows = connection.createStatement().executeQuery("select * from \"" + table + "\"")) {
                int columns = rows.getMetaData().getColumnCount();
                while (rows.next()) {
                    for (int column = 1; column <= columns; column++) {
                        rows.getObject(column);
                    }
                }
            }
        }
    }

    private static byte[] unpack(byte[] packed) throws IOException {
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
            return in.readAllBytes();
        }
    }

    private static String sha256(byte[] plain) throws NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(plain));
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
