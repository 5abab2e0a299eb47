package dev.ledgerwing.web.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClockTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            6:30  | 6.5
            06:30 | 6.5
            6.5   | 6.5
            6,25  | 6.25
            24:00 | 24
            0     | 0
            7 h   | 7
            """)
    void readsHoursOfADay(String typed, double hours) {
        assertThat(ClockText.hour(typed).value()).contains(hours);
    }

    @ParameterizedTest
    @ValueSource(strings = {"25", "24:01", "6:75", "-1", "noon", "6:3", "1e1"})
    void whatIsNoTimeIsToldBack(String typed) {
        assertThat(ClockText.hour(typed).problem())
                .hasValueSatisfying(problem -> assertThat(problem).endsWith("“" + typed + "”"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            +2     | 2
            −3:30  | -3.5
            5:45   | 5.75
            -14    | -14
            """)
    void readsHoursAheadOfUniversalTime(String typed, double hours) {
        assertThat(ClockText.hoursAhead(typed).value()).contains(hours);
    }

    @Test
    void noClockIsFifteenHoursAhead() {
        assertThat(ClockText.hoursAhead("15").value()).isEmpty();
    }

    @Test
    void readsDaysThatThereAre() {
        assertThat(ClockText.day("2028-02-29").value()).contains(LocalDate.of(2028, 2, 29));
        assertThat(ClockText.day("2027-02-29").problem()).isPresent();
        assertThat(ClockText.day("21.6.2026").problem()).isPresent();
        assertThat(ClockText.day("1800-01-01").problem()).isPresent();
        assertThat(ClockText.day("").value()).isEmpty();
    }

    @Test
    void writesHoursToTheMinute() {
        assertThat(ClockText.hours(6.5)).isEqualTo("6:30");
        assertThat(ClockText.hours(-3.75)).isEqualTo("−3:45");
        assertThat(ClockText.hours(23.9999)).isEqualTo("24:00");
    }
}
