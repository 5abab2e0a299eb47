package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What can be read in more than one way: numbers, units, quantities, cells in the wrong place. */
class PartsTableDoubtTest {

    @Test
    void aCommaBeforeThreeDigitsPartsThousandsInACommaFileAndIsPointedOut() {
        TableReading reading = Tables.read("Part,Mass [g]", "Pod,\"1,234\"", "Fin,33");

        assertThat(reading.decimalMark()).isEqualTo('.');
        assertThat(grams(reading)).containsExactly(1234.0, 33.0);
        assertThat(Tables.places(reading.notices())).containsExactly("2:2");
    }

    @Test
    void aPointBeforeThreeDigitsIsNoDoubtInACommaFile() {
        TableReading reading = Tables.read("Part,Mass [kg]", "Pod,1.234", "Fin,2");

        assertThat(grams(reading)).containsExactly(1234.0, 2000.0);
        assertThat(reading.notices()).isEmpty();
    }

    @Test
    void aNumberWithTheOtherDecimalMarkIsAProblem() {
        TableReading reading = Tables.read("Part;Mass [g]", "Pod;12,5", "Fin;3,25", "Rib;3.5", "Spar;1.234");

        assertThat(grams(reading)).containsExactly(12.5, 3.25, 1234.0);
        assertThat(Tables.places(reading.problems())).containsExactly("4:2");
        assertThat(reading.problems().get(0).sentence()).contains("decimal mark is the comma");
        assertThat(Tables.places(reading.notices())).as("1.234 is open again").containsExactly("5:2");
    }

    @Test
    void groupsOfDigitsMustBeWholeGroups() {
        TableReading reading =
                Tables.read("Part;Mass [g]", "Pod;1 234,5", "Fin;1'234,5", "Rib;12 34", "Spar;1,2,3", "Cap;0.123,5");

        assertThat(grams(reading)).containsExactly(1234.5, 1234.5);
        assertThat(Tables.places(reading.problems())).containsExactly("4:2", "5:2", "6:2");
    }

    @Test
    void aMassOfZeroIsTakenAsWrittenAndQuestioned() {
        TableReading reading = Tables.read("Part,Mass [g]", "Decal,0");

        assertThat(reading.parts().get(0).unitMass()).isEqualTo(Mass.ZERO);
        assertThat(Tables.places(reading.notices())).containsExactly("2:2");
    }

    @Test
    void aUnitNobodyKnowsIsAProblem() {
        TableReading cell = Tables.read("Part,Mass [g]", "Pod,3 stone", "Fin,5 mm");
        TableReading heading = Tables.read("Part,Mass [stone]", "Pod,3", "Fin,5 g");

        assertThat(Tables.places(cell.problems())).containsExactly("2:2", "3:2");
        assertThat(Tables.places(heading.problems())).containsExactly("1:2");
        assertThat(heading.parts().get(0).unitMass())
                .as("a bare number means nothing")
                .isNull();
        assertThat(grams(heading)).containsExactly(5.0);
    }

    @Test
    void aStationWithoutUnitIsTakenInMillimetresAndSaidOnce() {
        TableReading reading = Tables.read("Part,Mass [g],Station x", "Pod,3,120", "Fin,5,140", "Rib,2,3 in");

        assertThat(reading.parts()).extracting(part -> part.station().x()).doesNotContainNull();
        assertThat(Tables.places(reading.notices())).containsExactly("1:3");
    }

    @Test
    void aStationThatIsNoLengthIsAProblem() {
        TableReading reading =
                Tables.read("Part,Mass [g],Station x [mm]", "Pod,3,front", "Fin,5,1e9", "Rib,2,?", "Spar,9,-3.5");

        assertThat(Tables.places(reading.problems())).containsExactly("2:3", "3:3");
        assertThat(Tables.places(reading.notices())).containsExactly("4:3");
        assertThat(reading.parts().get(0).station().station()).isEmpty();
    }

    @Test
    void aDecimalCommaWithoutQuotesInACommaFileIsAProblem() {
        TableReading longer = Tables.read("Part,Qty,Mass [g],Assembly", "Spar,2,78,5,Wing", "Rib,14,3,Wing");
        TableReading shifted = Tables.read("Part,Qty,Mass [g],Assembly,Note", "Spar,2,78,5,Wing", "Rib,14,3,Wing");

        assertThat(Tables.places(longer.problems())).containsExactly("2:3");
        assertThat(longer.problems().get(0).sentence()).contains("“78,5”");
        assertThat(Tables.places(shifted.problems())).containsExactly("2:3");
        assertThat(longer.parts()).extracting(TablePart::name).containsExactly("Rib");
    }

    @Test
    void aMissingQuotationMarkThatSwallowsRowsIsPointedOut() {
        TableReading reading =
                Tables.read("Part,Qty,Mass [g],Assembly", "\"Spar,2,78,Wing", "Rib,14,3,Wing", "Pod\",1,251,Fuselage");

        assertThat(Tables.places(reading.notices())).containsExactly("2:1");
    }

    @Test
    void oddQuantitiesAreReadOnlyWhereTheyLeaveNoDoubt() {
        TableReading reading = Tables.read(
                "Part,Qty,Mass [g]",
                "A,2.0,1",
                "B,2 pairs,1",
                "C,\"1,000\",1",
                "D,1/2,1",
                "E,100001,1",
                "F,3 (+1),1",
                "G,12 Stück,1");

        assertThat(reading.parts()).extracting(TablePart::quantity).containsExactly(2, 12);
        assertThat(Tables.places(reading.notices())).containsExactly("2:2", "8:2");
        assertThat(Tables.places(reading.problems())).containsExactly("3:2", "4:2", "5:2", "6:2", "7:2");
    }

    @Test
    void textThatTheRecordCannotHoldIsAProblem() {
        TableReading reading = Tables.read(
                "Part,Mass [g],Note",
                "x".repeat(201) + ",1,",
                "Bell\u0007,1,",
                "Spar,1," + "n".repeat(2001),
                "Rib,2000000,");

        assertThat(Tables.places(reading.problems())).containsExactly("2:1", "3:1", "4:3", "5:2");
    }

    @Test
    void aCostThatCannotBeReadIsLeftOutAndSaid() {
        TableReading reading = Tables.read(
                "Part;Mass [g];Cost each", "A;1;€ 14,50", "B;1;14,50 EUR", "C;1;dear", "D;1;-3", "E;1;?", "F;1;");

        assertThat(reading.parts())
                .extracting(part -> part.supply().costEach())
                .containsExactly(14.5, 14.5, null, null, null, null);
        assertThat(Tables.places(reading.notices())).containsExactly("4:3", "5:3");
    }

    @Test
    void whatTheTableDoesNotSayIsNamedOnce() {
        TableReading reading = Tables.read("Part,Note", "Servo lead,", "Oddment,");

        assertThat(reading.assumed())
                .containsExactly(
                        "No column gives quantities: one piece is taken for each row.",
                        "No column gives masses: no mass is known.",
                        "For all 2 parts the table gives no assembly.",
                        "For all 2 parts the table does not say where the mass comes from: it counts as guessed.",
                        "For 1 of 2 parts the category is proposed from the name.",
                        "For 1 of 2 parts the table gives no category: structure is taken.",
                        "For all 2 parts the table does not say how far they have come: planned is taken.");
        assertThat(reading.partsOfUnknownMass()).isEqualTo(2);
    }

    private static List<Double> grams(TableReading reading) {
        return reading.parts().stream()
                .map(TablePart::unitMass)
                .filter(mass -> mass != null)
                .map(Mass::grams)
                .toList();
    }
}
