package dev.ledgerwing.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class SeedPartsTableTest {

    private static final String PART = "Part";
    private static final String QUANTITY = "Qty";
    private static final String MASS = "Mass each [g]";

    @Test
    void holdsTwentyFiveParts() throws IOException {
        assertThat(rows()).filteredOn(SeedPartsTableTest::isPart).hasSize(25);
    }

    @Test
    void leavesOneQuantityEmptyAndOneMassUnknown() throws IOException {
        assertThat(rows())
                .filteredOn(SeedPartsTableTest::isPart)
                .filteredOn(row -> row.get(QUANTITY).isEmpty())
                .extracting(row -> row.get(PART))
                .containsExactly("Strut seat in the hull, plywood");
        assertThat(rows())
                .filteredOn(row -> row.get(MASS).equals("?"))
                .extracting(row -> row.get(PART))
                .containsExactly("Leak sensor");
    }

    @Test
    void statesSubtotalsAndATotalThatAgreeWithTheRows() throws IOException {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal all = BigDecimal.ZERO;
        List<String> stated = new ArrayList<>();
        for (CSVRecord row : rows()) {
            if (row.get(PART).startsWith("Subtotal")) {
                assertThat(grams(row)).as(row.get(PART)).isEqualByComparingTo(sum);
                all = all.add(sum);
                sum = BigDecimal.ZERO;
                stated.add(row.get(PART));
            } else if (row.get(PART).equals("Total")) {
                assertThat(grams(row)).isEqualByComparingTo(all);
                stated.add("Total");
            } else if (isPart(row)) {
                sum = sum.add(grams(row).multiply(quantity(row)));
            }
        }
        assertThat(stated)
                .containsExactly(
                        "Subtotal floats",
                        "Subtotal struts",
                        "Subtotal fin under the tail",
                        "Subtotal electrics",
                        "Total");
    }

    private static boolean isPart(CSVRecord row) {
        return !row.get(MASS).isEmpty() && !row.get(PART).matches("(Subtotal|Total).*");
    }

    private static BigDecimal grams(CSVRecord row) {
        String mass = row.get(MASS);
        return mass.equals("?") ? BigDecimal.ZERO : new BigDecimal(mass.replace(',', '.'));
    }

    private static BigDecimal quantity(CSVRecord row) {
        String quantity = row.get(QUANTITY);
        return quantity.isEmpty() ? BigDecimal.ONE : new BigDecimal(quantity);
    }

    private static List<CSVRecord> rows() throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(';')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        String text = new String(SeedFleet.partsTable(), StandardCharsets.UTF_8);
        return format.parse(new StringReader(text)).getRecords();
    }
}
