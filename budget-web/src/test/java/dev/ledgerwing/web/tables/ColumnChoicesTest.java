package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.file.table.ColumnMeaning;
import dev.ledgerwing.core.file.table.Meaning;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColumnChoicesTest {

    private static final ColumnChoices CHOICES = new ColumnChoices(
            List.of(new ColumnMeaning(3, Meaning.UNIT_MASS, "oz"), new ColumnMeaning(15, Meaning.IGNORED, null)));

    @Test
    void travelInAnAddress() {
        assertThat(CHOICES.text()).isEqualTo("3.UNIT_MASS.oz~15.IGNORED");
        assertThat(ColumnChoices.parse(CHOICES.text())).contains(CHOICES);
        assertThat(ColumnChoices.parse("")).contains(ColumnChoices.NONE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"~", "3", "3.MASS", "0.NAME", "201.NAME", "3.NAME.<b>", "3.NAME~", "-1.NAME", "99999999999.NAME"
            })
    void areNothingWhereSomebodyTamperedWithThem(String text) {
        assertThat(ColumnChoices.parse(text)).isEmpty();
    }

    @Test
    void takeALaterChoiceForTheSameColumn() {
        assertThat(CHOICES.and(List.of(
                                new ColumnMeaning(3, Meaning.LINE_MASS, null),
                                new ColumnMeaning(1, Meaning.NAME, null)))
                        .text())
                .isEqualTo("1.NAME~3.LINE_MASS~15.IGNORED");
    }
}
