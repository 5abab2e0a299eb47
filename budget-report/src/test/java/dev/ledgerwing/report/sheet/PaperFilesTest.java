package dev.ledgerwing.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PaperFilesTest {

    @ParameterizedTest
    @ValueSource(strings = {"sheet.css", "pdf.css"})
    void usesNothingInPrintThatThePdfRendererDoesNotKnow(String css) {
        assertThat(text(css)).doesNotContain("var(", ": flex", ": grid");
    }

    @ParameterizedTest
    @ValueSource(strings = {"sheet.css", "screen.css", "pdf.css"})
    void refersToNothingOutsideItsFolder(String css) {
        assertThat(text(css)).doesNotContain("//", "@import", "..");
    }

    @Test
    void namesTheLicenceBesideEachFont() {
        assertThat(PaperFiles.FOR_BROWSERS).contains("fonts/LICENSE-Roboto.txt", "fonts/LICENSE-DejaVu.txt");
        assertThat(text("fonts/README.txt")).contains("Apache License", "DejaVu");
    }

    @Test
    void refusesAFileThatIsNotThere() {
        assertThatThrownBy(() -> PaperFiles.bytes("../secret")).isInstanceOf(IllegalArgumentException.class);
    }

    private static String text(String path) {
        return new String(PaperFiles.bytes(path), StandardCharsets.UTF_8);
    }
}
