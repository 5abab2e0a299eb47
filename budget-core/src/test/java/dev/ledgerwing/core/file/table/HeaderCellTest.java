package dev.ledgerwing.core.file.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeaderCellTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Mass [g]            | UNIT_MASS | g",
                "MASS(KG)            | UNIT_MASS | kg",
                "Weight (oz)         | UNIT_MASS | oz",
                "unit mass / kg      | UNIT_MASS | kg",
                "Each, g             | UNIT_MASS | g",
                "mass_g              | UNIT_MASS | g",
                "Mass (each) [g]     | UNIT_MASS | g",
                "Mass [g] (each)     | UNIT_MASS | g",
                "Gewicht in Gramm    | UNIT_MASS | g",
                "Gewicht/Stück       | UNIT_MASS |",
                "Einzelgewicht <g>   | UNIT_MASS | g",
                "Mass                | UNIT_MASS |",
                "Total weight (lb)   | LINE_MASS | lb",
                "Gesamtgewicht [kg]  | LINE_MASS | kg",
                "station (in)        | STATION_X | in",
                "Station in          | STATION_X | in",
                "CG x [mm]           | STATION_X | mm",
                "y_mm                | STATION_Y | mm",
                "Schwerpunkt z       | STATION_Z |",
                "Bezeichnung         | NAME      |",
                "Part                | NAME      |",
                "Name (long)         | NAME      |",
                "Stk.                | QUANTITY  |",
                "Baugruppe           | ASSEMBLY  |",
                "Kategorie           | CATEGORY  |",
                "Basis               | BASIS     |",
                "Zustand             | STATE     |",
                "Bestell-Nr.         | PART_CODE |",
                "Lieferant           | SUPPLIER  |",
                "Preis [EUR]         | COST_EACH |",
                "Bemerkung           | NOTE      |",
                "Pos.                | IGNORED   |"
            })
    void understandsHeadings(String text, Meaning meaning, @Nullable String unit) {
        HeaderCell cell = HeaderCell.of(text);

        assertThat(cell.meaning()).isEqualTo(meaning);
        assertThat(cell.unit()).isEqualTo(unit);
        assertThat(cell.strangeUnit()).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Mass [stone]", "Mass / stone", "Weight (mm)", "Station [g]"})
    void keepsAUnitItDoesNotKnow(String text) {
        HeaderCell cell = HeaderCell.of(text);

        assertThat(cell.isUnderstood()).isTrue();
        assertThat(cell.unit()).isNull();
        assertThat(cell.strangeUnit()).isNotNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Colour", "Parts and masses of Dunlin", "78.5", "Mass, roughly", "=Mass+1", "[g]"})
    void leavesOtherTextAlone(String text) {
        assertThat(HeaderCell.of(text).meaning()).isNull();
    }
}
