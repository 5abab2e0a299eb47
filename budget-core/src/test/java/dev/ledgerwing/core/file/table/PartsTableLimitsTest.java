package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PartsTableLimitsTest {

    @Test
    void readsTwentyThousandRows() {
        TableReading reading = PartsTable.read(rows(20_000));

        assertThat(reading.refusal()).isEmpty();
        assertThat(reading.parts()).hasSize(20_000);
        assertThat(reading.knownMass().grams()).isEqualTo(250_000);
    }

    @Test
    void refusesOneRowMore() {
        assertThat(PartsTable.read(rows(20_001)).refusal()).get().asString().contains("more than 20 000 rows");
    }

    @ParameterizedTest
    @ValueSource(strings = {",x", ",", ",Note"})
    void refusesTwoThousandColumns(String column) {
        String many = column.repeat(2000);

        assertThat(Tables.read("Part,Mass [g]" + many, "Spar,12").refusal())
                .get()
                .asString()
                .startsWith("Row 1 has 2002 columns; at most 200 are read.");
        assertThat(Tables.read("Part,Mass [g]", "Spar,12" + many).refusal())
                .get()
                .asString()
                .startsWith("Row 2 has 2002 columns; at most 200 are read.");
    }

    @Test
    void readsTwoHundredColumns() {
        String more = ",x".repeat(198);

        assertThat(Tables.read("Part,Mass [g]" + more, "Spar,12").parts()).hasSize(1);
    }

    @Test
    void refusesAFileOfMoreThanEightMegabytes() {
        byte[] large = new byte[8 * 1024 * 1024 + 1];
        Arrays.fill(large, (byte) 'a');

        assertThat(PartsTable.read(large).refusal()).get().asString().startsWith("The file is larger than 8 MB");
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t", "\"", "9", "\n", ",\"\n"})
    void copesWithMegabytesOfAnything(String text) {
        byte[] bytes = text.repeat(2_000_000 / text.length()).getBytes(StandardCharsets.US_ASCII);

        assertThat(PartsTable.read(bytes).refusal()).isPresent();
    }

    @Test
    void copesWithOneCellThatFillsTheFile() {
        TableReading reading = Tables.read("Part,Mass [g]", "Spar," + "9".repeat(4_000_000));

        assertThat(Tables.places(reading.problems())).containsExactly("2:2");
    }

    @Test
    void namesTheRowOfAQuotationMarkThatIsNeverClosed() {
        assertThat(Tables.read("Part,Mass [g]", "Spar,12", "\"Rib,3", "Pod,251").refusal())
                .get()
                .asString()
                .startsWith("A quotation mark that opens a cell of row 3 is never closed");
    }

    @Test
    void refusesBytesThatAreNoText() {
        byte[] bytes = {'P', 'a', 'r', 't', ',', 'M', 'a', 's', 's', '\n', (byte) 0x81, ',', '1', '\n'};

        assertThat(PartsTable.read(bytes).refusal()).get().asString().startsWith("The file is not text");
    }

    @Test
    void refusesUtf16WithHalfACharacter() {
        byte[] bytes = {(byte) 0xFF, (byte) 0xFE, 'P', 0, 'a'};

        assertThat(PartsTable.read(bytes).refusal()).isPresent();
    }

    @Test
    void refusesAFileOfBlankRows() {
        assertThat(Tables.read("", "   ", "\u00a0").refusal()).contains("The file holds no rows.");
    }

    private static byte[] rows(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> "Part " + number + ",1,12.5,Wing")
                .collect(Collectors.joining("\n", "Part,Qty,Mass [g],Assembly\n", "\n"))
                .getBytes(StandardCharsets.UTF_8);
    }
}
