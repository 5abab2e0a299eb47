package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.ledgerwing.core.file.table.TablePart.CategoryFrom;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One folder for each table: {@code table.csv} and what is to be made of it, written before the reader. */
class PartsTableCasesTest {

    /** Expected masses are given to the milligram, stations to the micrometre. */
    private static final double SAME_DIGITS = 1e-9;

    static Stream<String> tables() throws IOException {
        try (Stream<Path> folders = Files.list(folder())) {
            return folders.map(path -> path.getFileName().toString()).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void refusesOnlyWhatCannotBeReadAtAll(String table) {
        JsonNode refused = expected(table).path("refused");

        if (refused.isMissingNode()) {
            assertThat(read(table).refusal()).isEmpty();
        } else {
            assertThat(read(table).refusal()).get().asString().startsWith(refused.asString());
            assertThat(read(table).parts()).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void findsHowTheTableIsWritten(String table) {
        JsonNode expected = expected(table);
        TableReading reading = read(table);

        if (expected.has("columns")) {
            assertThat(reading.encoding()).isEqualTo(expected.get("encoding").asString());
            assertThat(String.valueOf(reading.delimiter()))
                    .isEqualTo(expected.get("delimiter").asString());
            assertThat(reading.headerRow()).isEqualTo(expected.get("headerRow").asInt());
        }
        assertThat(reading.columns().stream()
                        .map(column -> column.number() + " " + column.meaning() + " " + column.unit()))
                .isEqualTo(items(expected, "columns")
                        .map(column -> column.get("column").asInt() + " "
                                + column.get("meaning").asString() + " " + text(column, "unit"))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("tables")
    void readsTheParts(String table) {
        List<TablePart> parts = read(table).parts();
        List<JsonNode> expected = items(expected(table), "parts").toList();

        assertThat(parts).extracting(TablePart::row).isEqualTo(numbers(expected));
        for (int i = 0; i < parts.size(); i++) {
            isAsExpected(parts.get(i), expected.get(i));
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void pointsOutTheRightCells(String table) {
        TableReading reading = read(table);
        JsonNode expected = expected(table);

        assertThat(places(reading.notices())).isEqualTo(places(expected, "notices"));
        assertThat(places(reading.problems())).isEqualTo(places(expected, "problems"));
        assertThat(Stream.concat(reading.notices().stream(), reading.problems().stream()))
                .allSatisfy(note -> assertThat(note.sentence()).endsWith("."));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void checksTheStatedSums(String table) {
        List<TableTotal> totals = read(table).totals();
        List<JsonNode> expected = items(expected(table), "totals").toList();

        assertThat(totals).extracting(TableTotal::row).isEqualTo(numbers(expected));
        for (int i = 0; i < totals.size(); i++) {
            assertThat(Objects.requireNonNull(totals.get(i).stated()).grams())
                    .isCloseTo(expected.get(i).get("statedG").asDouble(), within(SAME_DIGITS));
            assertThat(totals.get(i).ownSum().grams())
                    .isCloseTo(expected.get(i).get("ownSumG").asDouble(), within(SAME_DIGITS));
            assertThat(totals.get(i).agrees())
                    .isEqualTo(expected.get(i).get("agrees").asBoolean());
        }
    }

    /** What a row does not give is left out of the expectations. */
    private static void isAsExpected(TablePart part, JsonNode expected) {
        assertThat(part.name()).isEqualTo(expected.get("name").asString());
        assertThat(part.quantity()).isEqualTo(expected.get("quantity").asInt());
        sameNumber(grams(part.unitMass()), expected.get("unitMassG"));
        assertThat(String.valueOf(part.assembly())).isEqualTo(text(expected, "assembly"));
        assertThat(part.basisGiven() ? part.basis().name() : "null").isEqualTo(text(expected, "basis"));
        assertThat(part.categoryFrom() == CategoryFrom.COLUMN ? part.category().name() : "null")
                .isEqualTo(text(expected, "category"));
        assertThat(String.valueOf(part.state())).isEqualTo(text(expected, "state"));
        sameNumber(mm(part.station().x()), expected.get("xMm"));
        sameNumber(mm(part.station().y()), expected.get("yMm"));
        sameNumber(mm(part.station().z()), expected.get("zMm"));
    }

    private static void sameNumber(@Nullable Double found, @Nullable JsonNode expected) {
        if (expected == null || expected.isNull()) {
            assertThat(found).isNull();
        } else {
            assertThat(found).isNotNull().isCloseTo(expected.asDouble(), within(SAME_DIGITS));
        }
    }

    private static @Nullable Double grams(@Nullable Mass mass) {
        return mass == null ? null : mass.grams();
    }

    private static @Nullable Double mm(@Nullable Length length) {
        return length == null ? null : length.mm();
    }

    private static List<String> places(List<CellNote> notes) {
        return notes.stream().map(note -> note.row() + ":" + note.column()).toList();
    }

    private static List<String> places(JsonNode expected, String list) {
        return items(expected, list)
                .map(note -> note.get("row").asInt() + ":" + note.get("column").asInt())
                .toList();
    }

    private static List<Integer> numbers(List<JsonNode> rows) {
        return rows.stream().map(row -> row.get("row").asInt()).toList();
    }

    private static String text(JsonNode node, String field) {
        return node.has(field) ? node.get(field).asString() : "null";
    }

    private static Stream<JsonNode> items(JsonNode node, String list) {
        return StreamSupport.stream(node.path(list).spliterator(), false);
    }

    private static JsonNode expected(String table) {
        return JsonMapper.shared().readTree(bytes(table, "expected.json"));
    }

    private static TableReading read(String table) {
        return PartsTable.read(bytes(table, "table.csv"));
    }

    private static byte[] bytes(String table, String file) {
        try {
            return Files.readAllBytes(folder().resolve(table).resolve(file));
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    private static Path folder() {
        try {
            return Path.of(Objects.requireNonNull(PartsTableCasesTest.class.getResource("/tables"))
                    .toURI());
        } catch (URISyntaxException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }
}
