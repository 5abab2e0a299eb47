package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ImportsTest {

    @Test
    void theReasonIsWhatWasTypedAndTheTotalsThatDisagree() {
        assertThat(Imports.reason("", List.of())).isEmpty();
        assertThat(Imports.reason("spring clean", List.of())).isEqualTo("spring clean");
        assertThat(Imports.reason("spring clean", List.of("Row 3 is off.", "Row 9 is off.")))
                .isEqualTo("spring clean. Row 3 is off. Row 9 is off.");
        assertThat(Imports.reason("Why not?", List.of("Row 3 is off."))).isEqualTo("Why not? Row 3 is off.");
    }

    @Test
    void theReasonStaysAsShortAsTheHistoryWants() {
        assertThat(Imports.reason("r".repeat(300), Collections.nCopies(40, "A total is off.")))
                .hasSize(500)
                .endsWith("…");
    }
}
