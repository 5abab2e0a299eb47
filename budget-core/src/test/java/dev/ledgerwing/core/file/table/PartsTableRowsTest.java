package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import org.junit.jupiter.api.Test;

/** Which rows are parts, headings, sums or text. */
class PartsTableRowsTest {

    @Test
    void aTotalWithPartsAfterItIsASubtotal() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [g],Assembly",
                "Spar,1,100,Wing",
                "Total wing,,100,",
                "Pod,1,200,Fuselage",
                "Sum,,200,",
                "Fin,1,50,Tail",
                "Total tail,,50,",
                "Total,,350,");

        assertThat(reading.totals())
                .extracting(TableTotal::row, TableTotal::agrees)
                .containsExactly(tuple(3, true), tuple(5, true), tuple(7, true), tuple(8, true));
        assertThat(reading.parts()).extracting(TablePart::name).containsExactly("Spar", "Pod", "Fin");
    }

    @Test
    void ofManyHeadingsTheFirstAreNamedAndTheOthersCounted() {
        TableReading reading = Tables.read("Part,Qty,Mass [g]\r\n" + "Bay,,\r\nSpar,1,100\r\n".repeat(15));

        assertThat(reading.assumed().get(0))
                .contains("“Bay” (row 24) and 3 more.")
                .doesNotContain("row 26");
    }

    @Test
    void aTableOfOnePartIsSpokenOfInTheSingular() {
        assertThat(Tables.read("Part,Qty,Mass [g]", "Spar,1,100").assumed())
                .contains("For the only part the table gives no assembly.");
    }

    @Test
    void theLastSumByTheNameOfAnAssemblyIsOfThatAssembly() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [g],Assembly",
                "Spar,1,100,Wing",
                "Total wing,,100,",
                "Fin,1,50,Tail",
                "Total tail,,50,");

        assertThat(reading.wrongTotals()).isEmpty();
    }

    @Test
    void theWordForASumMayComeLast() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [g]",
                "Wing,,",
                "Spar,1,100",
                "Wing total,,100",
                "Tail,,",
                "Fin,1,50",
                "Bolts total,2,5");

        assertThat(reading.totals()).extracting(TableTotal::row).containsExactly(4);
        assertThat(reading.parts()).extracting(TablePart::name).containsExactly("Spar", "Fin", "Bolts total");
        assertThat(Tables.places(reading.notices())).containsExactly("7:1");
    }

    @Test
    void aSumBelowSumsCoversThemAll() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [g]",
                "Left spar,1,100",
                "Subtotal left,,100",
                "Right spar,1,101",
                "Subtotal right,,101",
                "Subtotal wing,,201",
                "Pod,1,50",
                "Subtotal fuselage,,50",
                "Total,,251");

        assertThat(reading.totals()).hasSize(5).allMatch(TableTotal::agrees);
    }

    @Test
    void aSumAboveAllPartsIsOfTheWholeTable() {
        TableReading reading = Tables.read("Part,Qty,Mass [g]", "Total,,150", "Spar,1,100", "Fin,1,50");

        assertThat(reading.totals()).singleElement().matches(TableTotal::agrees);
    }

    @Test
    void aPageCarryIsOfEverythingAboveIt() {
        TableReading reading = Tables.read(
                "Teil;Menge;Gewicht [g]",
                "Holm;1;100",
                "Übertrag;;100",
                "Rippe;2;25",
                "Übertrag;;150",
                "Rumpf;1;50",
                "Summe;;200");

        assertThat(reading.totals()).hasSize(3).allMatch(TableTotal::agrees);
        assertThat(reading.parts()).hasSize(3);
    }

    @Test
    void onlyWholeWordsMakeASum() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [g]", "Totally clear dome,1,5", "Sumac handle,1,6", "Gesamtansicht,1,7", "=SUM(B2),1,8");

        assertThat(reading.parts()).hasSize(4);
        assertThat(reading.totals()).isEmpty();
        assertThat(reading.notices()).isEmpty();
    }

    @Test
    void aPartThatBeginsLikeASumIsAPartBecauseOfItsQuantityWhichIsSaid() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [g],Assembly", "Total pressure probe,1,5,Nose", "Total nose,1,5,Nose", "Spar,1,9,Wing");

        assertThat(reading.parts()).extracting(TablePart::name).containsExactly("Total pressure probe", "Spar");
        assertThat(reading.totals()).extracting(TableTotal::row).containsExactly(3);
        assertThat(Tables.places(reading.notices())).containsExactly("2:1");
    }

    @Test
    void aSumOverRowsWithProblemsSaysThatTheyAreLeftOut() {
        TableReading reading = Tables.read("Part,Qty,Mass [g]", "Spar,1,100", "Fin,1,heavy", "Total,,150");

        TableTotal total = reading.totals().get(0);
        assertThat(total.agrees()).isFalse();
        assertThat(total.complete()).isFalse();
        assertThat(total.sentence())
                .isEqualTo("Row 4 “Total” states 150\u2009g; the part of row 2 has 100\u2009g: it is 50\u2009g more."
                        + " Left out, as there is a problem: row 3.");
    }

    @Test
    void aSumWithoutANumberIsStillNoPart() {
        TableReading reading = Tables.read("Part,Qty,Mass [g]", "Spar,1,100", "Total,,", "Total,,heavy");

        assertThat(reading.parts()).hasSize(1);
        assertThat(reading.totals()).extracting(TableTotal::stated).containsExactly(null, null);
        assertThat(Tables.places(reading.notices())).containsExactly("3:1", "4:3");
        assertThat(reading.wrongTotals()).isEmpty();
    }

    @Test
    void aWrongTotalNamesTheRowsAndASlipThatExplainsIt() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [g]", "Spar,2,100", "Fin,1,50", "Subtotal,,150", "Pod,1,30.4", "Total,,430.4");

        assertThat(reading.wrongTotals())
                .containsExactly(
                        "Row 4 “Subtotal” states 150\u2009g; the parts of rows 2 to 3 add up to 250\u2009g: it is 100\u2009g less."
                                + " It is the sum of the masses of one piece each, without the quantities.",
                        "Row 6 “Total” states 430.4\u2009g; the parts of rows 2 to 5 add up to 280.4\u2009g:"
                                + " it is 150\u2009g more. It counts the sums above it a second time.");
    }

    @Test
    void roundedDigitsInTheRowsAreNamedAsAReason() {
        TableReading reading = Tables.read("Part,Qty,Mass [g]", "Rib,20,3.2", "Total,,63.5");

        assertThat(reading.wrongTotals())
                .singleElement()
                .asString()
                .endsWith("Rounded digits in the rows can be the reason.");
    }

    @Test
    void aNameAloneIsAHeadingWhereNoColumnGivesAssemblies() {
        TableReading reading = Tables.read("Part,Qty,Mass [g]", "WING,,", "Spar,1,100", "TAIL,,", "Fin,1,50", "Glue,,");

        assertThat(reading.parts()).extracting(TablePart::assembly).containsExactly("WING", "TAIL");
        assertThat(Tables.places(reading.notices()))
                .as("Glue may have been a part")
                .containsExactly("6:1");
        assertThat(reading.assumed().get(0)).contains("“WING” (row 2)", "“TAIL” (row 4)");
    }

    @Test
    void aNameAloneIsAPartWhereAColumnGivesAssemblies() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [g],Assembly",
                "Wing,,,",
                "Spar,1,100,Wing",
                "Glue,,,",
                "Fin,1,50,Tail",
                ",,,Nose",
                "Cap,1,5,");

        assertThat(reading.parts()).extracting(TablePart::name).containsExactly("Spar", "Glue", "Fin", "Cap");
        assertThat(Tables.places(reading.notices())).containsExactly("4:2", "4:3");
        assertThat(reading.parts().get(3).assembly()).isEqualTo("Nose");
    }

    @Test
    void afterASumNoHeadingHoldsAnyMore() {
        TableReading reading = Tables.read("Part,Qty,Mass [g]", "WING,,", "Spar,1,100", "Subtotal,,100", "Motor,1,50");

        assertThat(reading.parts()).extracting(TablePart::assembly).containsExactly("WING", null);
    }

    @Test
    void textBelowTheLastSumIsNoPart() {
        TableReading reading =
                Tables.read("Part,Qty,Mass [g],Assembly", "Spar,1,100,Wing", "Total,,100,", "Weighed in the hall,,,");

        assertThat(reading.parts()).hasSize(1);
        assertThat(Tables.places(reading.notices())).containsExactly("4:1");
    }

    @Test
    void headingsThatDifferFromTheFirstAreAProblem() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [g]", "Spar,1,100", "part,qty,mass [g]", "Fin,1,50", "Part,Mass [kg],Qty", "Pod,1,2");

        assertThat(Tables.places(reading.problems())).containsExactly("5:1");
        assertThat(reading.parts()).hasSize(3);
    }

    @Test
    void aRowCountsOnceHoweverManyLinesItsCellsHave() {
        TableReading reading = Tables.read("Part,Mass [g]", "\"Rib\nplain\rthin\",heavy", "Fin,heavy");

        assertThat(Tables.places(reading.problems())).containsExactly("2:2", "3:2");
    }
}
