package dev.ledgerwing.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintableTextTest {

    @Test
    void leavesTextAsItIs() {
        String text = "Tail boom, 28 mm\n\tŻółw “½” − ▲ \uD83D\uDEE9";

        assertThat(PrintableText.of(text)).isEqualTo(text);
    }

    @ParameterizedTest(name = "{index}")
    @ValueSource(
            strings = {
                "\u0000", "\u001b", "\u0085", "\u009b", "\uFFFE", "\uFFFF", "\uD800", "\uDC00", "\u202E", "\u2066"
            })
    void replacesWhatNoPageAndNoTerminalMayGet(String character) {
        assertThat(PrintableText.of("a" + character + "b")).isEqualTo("a\uFFFDb");
    }
}
