package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How columns are understood, and how a person changes that. */
class PartsTableColumnsTest {

    private static final byte[] TWO_MASSES = Tables.bytes("Part,Mass [g],Weight (oz)", "Spar,78.5,2.77");

    @Test
    void aClearerHeadingIsTheNameWhereverItStands() {
        TableReading reading = Tables.read("Item,Part name,Mass [g]", "1,Spar,78");

        assertThat(meanings(reading)).containsExactly(Meaning.IGNORED, Meaning.NAME, Meaning.UNIT_MASS);
        assertThat(Tables.places(reading.notices())).containsExactly("1:1");
    }

    @Test
    void aHeadingThatIsNotUnderstoodIsSaid() {
        TableReading reading = Tables.read("Part,Colour,Mass [g],", "Spar,red,78,");

        assertThat(meanings(reading)).containsExactly(Meaning.NAME, Meaning.IGNORED, Meaning.UNIT_MASS);
        assertThat(reading.notices().get(0).sentence()).contains("“Colour” is not understood");
    }

    @Test
    void aColumnWithoutHeadingThatHoldsSomethingIsSaidOnce() {
        TableReading reading = Tables.read("Part,,Mass [g]", "Spar,,78", "Fin,x,50", "Rib,y,3");

        assertThat(Tables.places(reading.notices())).containsExactly("1:2");
        assertThat(reading.notices().get(0).sentence()).contains("row 3 holds “x”");
    }

    @Test
    void aPersonChoosesTheOtherOfTwoMassColumns() {
        TableReading reading = PartsTable.read(TWO_MASSES, List.of(new ColumnMeaning(3, Meaning.UNIT_MASS, null)));

        assertThat(meanings(reading)).containsExactly(Meaning.NAME, Meaning.IGNORED, Meaning.UNIT_MASS);
        assertThat(reading.parts().get(0).lineMass().mg()).isEqualTo(78_528);
        assertThat(reading.columns().get(2).unit()).as("kept from the heading").isEqualTo("oz");
    }

    @Test
    void aPersonChangesTheUnit() {
        TableReading reading = PartsTable.read(TWO_MASSES, List.of(new ColumnMeaning(2, Meaning.UNIT_MASS, "kg")));

        assertThat(reading.parts().get(0).lineMass().grams()).isEqualTo(78_500);
    }

    @Test
    void aPersonLeavesAColumnOut() {
        TableReading reading = PartsTable.read(TWO_MASSES, List.of(new ColumnMeaning(2, Meaning.IGNORED, null)));

        assertThat(meanings(reading)).containsExactly(Meaning.NAME, Meaning.IGNORED, Meaning.UNIT_MASS);
    }

    @Test
    void aUnitThatDoesNotBelongIsAProblemOfTheColumn() {
        TableReading reading = PartsTable.read(TWO_MASSES, List.of(new ColumnMeaning(2, Meaning.UNIT_MASS, "mm")));

        assertThat(Tables.places(reading.problems())).containsExactly("1:2");
    }

    @Test
    void twoColumnsChosenForOneThingAreAProblem() {
        TableReading reading = PartsTable.read(
                TWO_MASSES,
                List.of(new ColumnMeaning(2, Meaning.UNIT_MASS, null), new ColumnMeaning(3, Meaning.UNIT_MASS, null)));

        assertThat(Tables.places(reading.problems())).containsExactly("1:3");
    }

    @Test
    void aTableWithoutANameColumnAsksForOne() {
        TableReading reading = Tables.read("Thing,Qty,Mass [g]", "Spar,2,78");
        TableReading changed = PartsTable.read(
                Tables.bytes("Thing,Qty,Mass [g]", "Spar,2,78"), List.of(new ColumnMeaning(1, Meaning.NAME, null)));

        assertThat(Tables.places(reading.problems())).containsExactly("1:1");
        assertThat(reading.isUsable()).isFalse();
        assertThat(changed.isUsable()).isTrue();
    }

    @Test
    void aTableWithoutHeadingsIsReadOnceAPersonSaysWhatItsColumnsHold() {
        TableReading reading = PartsTable.read(
                Tables.bytes("Spar;2;78,5;Wing", "Rib;14;3,2;Wing"),
                List.of(
                        new ColumnMeaning(1, Meaning.NAME, null),
                        new ColumnMeaning(2, Meaning.QUANTITY, null),
                        new ColumnMeaning(3, Meaning.UNIT_MASS, "g"),
                        new ColumnMeaning(4, Meaning.ASSEMBLY, null)));

        assertThat(reading.headerRow()).isZero();
        assertThat(reading.isUsable()).isTrue();
        assertThat(reading.knownMass().grams()).isEqualTo(201.8);
    }

    @Test
    void aColumnNumberIsWithinTheTable() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ColumnMeaning(0, Meaning.NAME, null));
        assertThatIllegalArgumentException().isThrownBy(() -> new ColumnMeaning(201, Meaning.NAME, null));
    }

    @Test
    void aSampleShowsWhatStandsInEachColumnBelowItsHeading() {
        byte[] table =
                Tables.bytes("Part;Qty;;Mass [g]", "Spar;2;;78,5", "", "Spar;2;x;3,2", "Rib;14;;3,2", "Fin;1;;7");

        assertThat(PartsTable.sample(table))
                .containsExactly(
                        new ColumnSample(1, List.of("Spar", "Rib", "Fin")),
                        new ColumnSample(2, List.of("2", "14", "1")),
                        new ColumnSample(3, List.of("x")),
                        new ColumnSample(4, List.of("78,5", "3,2", "7")));
    }

    @Test
    void aSampleNeedsNoHeadingsButAFileThatCanBeRead() {
        assertThat(PartsTable.sample(Tables.bytes("Spar;2", "Rib;14")))
                .containsExactly(new ColumnSample(1, List.of("Spar", "Rib")), new ColumnSample(2, List.of("2", "14")));
        assertThat(PartsTable.sample(new byte[] {'a', 0})).isEmpty();
        assertThat(PartsTable.sample(new byte[0])).isEmpty();
    }

    @Test
    void supplyAndNoteAreTaken() {
        TablePart part = Tables.read(
                        "Part no.,Part,Mass [g],Supplier,Cost each,Remark",
                        "SV-09,Servo,12,tube shop,9.80,\"two\nlines\"")
                .parts()
                .get(0);

        assertThat(part.supply().partCode()).isEqualTo("SV-09");
        assertThat(part.supply().supplier()).isEqualTo("tube shop");
        assertThat(part.supply().costEach()).isEqualTo(9.8);
        assertThat(part.note()).isEqualTo("two\nlines");
    }

    private static List<Meaning> meanings(TableReading reading) {
        return reading.columns().stream().map(TableColumn::meaning).toList();
    }
}
