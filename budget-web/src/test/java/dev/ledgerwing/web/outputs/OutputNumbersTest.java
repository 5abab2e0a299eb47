package dev.ledgerwing.web.outputs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers of outputs as they are written for people. */
class OutputNumbersTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 2 3 4 6     | 1-4, 6
            1 2           | 1, 2
            7 8 5         | 7, 8, 5
            3 2 1         | 3, 2, 1
            9             | 9
            1 2 3 7 8 9   | 1-3, 7-9
            """)
    void threeOrMoreInARowAreWrittenAsFirstAndLast(String numbers, String text) {
        List<Integer> given =
                Arrays.stream(numbers.split(" ", -1)).map(Integer::valueOf).toList();
        assertThat(OutputNumbers.text(given)).isEqualTo(text);
    }
}
