package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileNameTest {

    @ParameterizedTest
    @CsvSource({
        "wing.csv, wing.csv",
        "C:\\tables\\wing.csv, wing.csv",
        "../../etc/wing.csv, wing.csv",
        "'wing\u202egnp.csv', winggnp.csv",
        "'a\nb.csv', ab.csv",
        "tables/, ''",
        "<b>.csv, <b>.csv"
    })
    void isWhatCanBeSeenOfIt(String sent, String name) {
        assertThat(FileName.of(sent)).isEqualTo(name);
    }

    @Test
    void isCutWhereItWouldFillTheLine() {
        assertThat(FileName.of("x".repeat(300))).hasSize(80).endsWith("…");
    }
}
