package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.file.table.ColumnMeaning;
import dev.ledgerwing.core.file.table.Meaning;
import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnViewTest {

    private static final List<ColumnView> MASS =
            List.of(new ColumnView(1, "Mass [g]", "78.5", Meaning.UNIT_MASS, "g", "from the heading"));

    private static List<ColumnMeaning> changes(String meaning, String unit) {
        return ColumnView.changes(MASS, List.of(meaning), List.of(unit));
    }

    @Test
    void listsThatWereLeftAloneChangeNothing() {
        assertThat(changes("UNIT_MASS", "g")).isEmpty();
        assertThat(ColumnView.changes(MASS, List.of(), List.of())).isEmpty();
    }

    @Test
    void aChangedMeaningOrUnitIsAChoice() {
        assertThat(changes("LINE_MASS", "g")).containsExactly(new ColumnMeaning(1, Meaning.LINE_MASS, "g"));
        assertThat(changes("UNIT_MASS", "oz")).containsExactly(new ColumnMeaning(1, Meaning.UNIT_MASS, "oz"));
    }

    @Test
    void aUnitLeftOverFromTheOldMeaningIsDropped() {
        assertThat(changes("STATION_X", "g")).containsExactly(new ColumnMeaning(1, Meaning.STATION_X, null));
        assertThat(changes("NOTE", "g")).containsExactly(new ColumnMeaning(1, Meaning.NOTE, null));
    }

    @Test
    void aUnitChosenAmissIsLeftForTheReaderToSay() {
        assertThat(changes("UNIT_MASS", "mm")).containsExactly(new ColumnMeaning(1, Meaning.UNIT_MASS, "mm"));
    }

    @Test
    void whatNoListOffersChangesNothing() {
        assertThat(changes("WEIGHT", "g")).isEmpty();
        assertThat(changes("UNIT_MASS", "<b>")).containsExactly(new ColumnMeaning(1, Meaning.UNIT_MASS, null));
    }
}
