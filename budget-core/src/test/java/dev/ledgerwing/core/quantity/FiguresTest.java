package dev.ledgerwing.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTest {

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restoreTheLanguage() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "tr"})
    void writesTheSameInEveryLanguage(String language) {
        Locale.setDefault(Locale.forLanguageTag(language));

        assertThat(Figures.METRIC.mass(Mass.ofGrams(6912))).isEqualTo("6912\u2009g");
        assertThat(Figures.METRIC.mass(Mass.ofGrams(12_480))).isEqualTo("12.480\u2009kg");
        assertThat(Figures.METRIC.mass(Mass.ofGrams(0.354))).isEqualTo("0.35\u2009g");
        assertThat(Figures.METRIC.signedMass(Mass.ofGrams(-122))).isEqualTo("\u2212122\u2009g");
        assertThat(Figures.METRIC.signedMass(Mass.ofGrams(48))).isEqualTo("+48\u2009g");
        assertThat(Figures.percent(4.25)).isEqualTo("4.3\u2009%");
    }

    @Test
    void writesOuncesAndInchesForWhoReadsThem() {
        Figures figures = new Figures(UnitSystem.OUNCE_INCH);

        assertThat(figures.mass(Mass.ofGrams(28.349523125))).isEqualTo("1\u2009oz");
        assertThat(figures.length(Length.ofMm(76.2))).isEqualTo("3\u2009in");
    }

    @Test
    void keepsAPlaceMoreForTinyMassesSoThatNoneReadsAsNothing() {
        assertThat(Figures.METRIC.mass(new Mass(4))).isEqualTo("0.004\u2009g");
        assertThat(Figures.METRIC.mass(new Mass(-99))).isEqualTo("\u22120.099\u2009g");
        assertThat(Figures.METRIC.mass(new Mass(104))).isEqualTo("0.1\u2009g");
        assertThat(new Figures(UnitSystem.OUNCE_INCH).mass(new Mass(100))).isEqualTo("0.004\u2009oz");
    }

    @Test
    void writesEstimatesWithoutTenthsOfAGram() {
        assertThat(Figures.METRIC.roughMass(Mass.ofGrams(209.7))).isEqualTo("210\u2009g");
        assertThat(Figures.METRIC.roughMass(Mass.ofGrams(1.794))).isEqualTo("1.79\u2009g");
    }

    @Test
    void neverWritesMinusZero() {
        assertThat(Figures.number(-0.001, 1)).isEqualTo("0");
    }
}
