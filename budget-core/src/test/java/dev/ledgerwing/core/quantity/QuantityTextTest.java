package dev.ledgerwing.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {

    /** Pound and ounce from the international agreement of 1959: 453.59237 g and a 16th of it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            85          | 85000
            1.2 kg      | 1200000
            1,2 kg      | 1200000
            3.5 oz      | 99223
            3,5oz       | 99223
            1 lb        | 453592
            170 lb      | 77110703
            222.5 lbs   | 100924302
            7.6964 lb.  | 3491028
            0.4 g       | 400
            1 200       | 1200000
            1'200.5 g   | 1200500
            1.234,5 g   | 1234500
            1,234.5 g   | 1234500
            -12         | -12000
            −12 g       | -12000
            12.         | 12000
            1e3         | 1000000
            """)
    void readsMassesAsPeopleTypeThem(String typed, long mg) {
        assertThat(QuantityText.mass(typed, MassUnit.G).value()).contains(new Mass(mg));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            210      | 210000
            85 mm    | 85000
            3 in     | 76200
            3"       | 76200
            12.33 in | 313182
            -75 in   | -1905000
            −21.5 in | -546100
            1,5 cm   | 15000
            0.4 m    | 400000
            """)
    void readsLengths(String typed, long um) {
        assertThat(QuantityText.length(typed, LengthUnit.MM).value()).contains(new Length(um));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"abc", "NaN", "Infinity", "1e400", "12 stone", "1.2.3 g", "--4", "=1+1", "<b>", "9e99 kg", "1/2"
            })
    void saysWhatItDidNotUnderstand(String typed) {
        assertThat(QuantityText.mass(typed, MassUnit.G).value()).isEmpty();
        assertThat(QuantityText.mass(typed, MassUnit.G).problem()).isPresent();
    }

    @Test
    void anEmptyFieldIsNothingNotZero() {
        assertThat(QuantityText.mass("  ", MassUnit.G)).isEqualTo(Reading.nothing());
    }

    @Test
    void aNumberWithoutUnitCountsInTheUnitOfTheField() {
        assertThat(QuantityText.mass("2", MassUnit.OZ).value()).contains(new Mass(56_699));
    }
}
