package dev.ledgerwing.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainPageTest {

    @Test
    void goesOnBelowWhereTheTextBegan() {
        String page =
                new PlainPage().hanging("label ", "word ".repeat(20).trim()).toString();

        assertThat(page)
                .isEqualTo("label " + "word ".repeat(15).trim() + "\n" + "      "
                        + "word ".repeat(5).trim() + "\n");
    }

    @Test
    void breaksAWordThatIsLongerThanALine() {
        String page = new PlainPage().line("x".repeat(170)).toString();

        assertThat(page.lines()).containsExactly("x".repeat(80), "x".repeat(80), "x".repeat(10));
    }

    @Test
    void countsCharactersNotHalvesOfThem() {
        String page = new PlainPage().line("\uD83D\uDEE9".repeat(81)).toString();

        assertThat(page.lines()).containsExactly("\uD83D\uDEE9".repeat(80), "\uD83D\uDEE9");
    }

    @Test
    void keepsAFigureAndItsUnitOnOneLine() {
        String page = new PlainPage().line("x".repeat(75) + " 1500\u2009g").toString();

        assertThat(page.lines()).containsExactly("x".repeat(75), "1500 g");
    }
}
