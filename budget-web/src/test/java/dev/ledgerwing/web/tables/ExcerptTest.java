package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ExcerptTest {

    private static final String FEATHER = "\uD83E\uDEB6";

    @Test
    void leavesAloneWhatFits() {
        assertThat(Excerpt.of("x".repeat(120))).isEqualTo("x".repeat(120));
    }

    @Test
    void neverCutsACharacterInTwo() {
        assertThat(Excerpt.of("ab" + FEATHER + "cd", 4)).isEqualTo("ab…");
        assertThat(Excerpt.of("ab" + FEATHER + "cd", 5)).isEqualTo("ab" + FEATHER + "…");
    }
}
