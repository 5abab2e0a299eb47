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

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            AMPERE           | 5 A      | 5
            AMPERE           | 0,8      | 0.8
            AMPERE           | 800 mA   | 0.8
            VOLT             | 3,7 V    | 3.7
            VOLT             | 250mV    | 0.25
            WATT             | 1.2 kW   | 1200
            MILLIAMPERE_HOUR | 10 Ah    | 10000
            MILLIAMPERE_HOUR | 3200 mAh | 3200
            MILLIAMPERE_HOUR | 5 000    | 5000
            MILLIOHM         | 2 mΩ     | 2
            MILLIOHM         | 0.02 Ω   | 20
            MILLIOHM         | 2 mohm   | 2
            C_RATE           | 25C      | 25
            CELSIUS          | −10 °C   | -10
            PERCENT          | 7,5 %    | 7.5
            MINUTE           | 1.5 h    | 90
            MINUTE           | 30 s     | 0.5
            DEGREE           | 20°      | 20
            LATITUDE         | 33.9° S  | -33.9
            LONGITUDE        | 2.25 W   | -2.25
            METRE            | 1.2 km   | 1200
            MICROSECOND      | 2.2 ms   | 2200
            MICROSECOND      | 900 µs   | 900
            MICROSECOND      | 900 μs   | 900
            MICROSECOND      | 900 us   | 900
            HERTZ            | 0.4 kHz  | 400
            MICROSECOND      | 1.5 ms   | 1500
            """)
    void readsNumbersWithUnitsOfTheirKind(NumberUnit unit, String typed, double number) {
        assertThat(QuantityText.number(typed, unit).value()).contains(number);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            AMPERE           | 5 V
            VOLT             | 5 A
            MILLIAMPERE_HOUR | 5 A
            MILLIOHM         | 2 MΩ
            MILLIOHM         | 85 mm
            PERCENT          | 5 C
            MINUTE           | 12:30
            LATITUDE         | 7.5 E
            MICROSECOND      | 2 s
            WATT             | abc
            HERTZ            | 5 ms
            MICROSECOND      | 50 Hz
            """)
    void aUnitOfAnotherKindIsNotUnderstood(NumberUnit unit, String typed) {
        assertThat(QuantityText.number(typed, unit).value()).isEmpty();
        assertThat(QuantityText.number(typed, unit).problem())
                .hasValueSatisfying(
                        problem -> assertThat(problem).startsWith("is not a").endsWith("“" + typed + "”"));
    }
}
