package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellTextTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+cmd", "-2 clip", "@x", "\t=1", "\r=1", "\n=1", " =1", "＝1", "'=1", "''-x", "-"})
    void textThatASpreadsheetWouldRunGetsAnApostropheThatReadingTakesAway(String text) {
        assertThat(CellText.safe(text)).isEqualTo("'" + text);
        assertThat(CellText.unprotected(CellText.safe(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Spar", "'00012", "'; drop", "a=b", "", "'", "<script>alert(1)</script>", "1-2"})
    void otherTextStaysAsItIs(String text) {
        assertThat(CellText.safe(text)).isEqualTo(text);
        assertThat(CellText.unprotected(text)).isEqualTo(text);
    }
}
