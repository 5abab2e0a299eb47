package dev.ledgerwing.core.build;

import java.util.List;

/**
 * How much a mass is expected to grow until it is weighed, in per cent of it, by category and basis. A weighed mass does not
 * grow.
 *
 * @param source where the numbers come from, in words
 * @param rows one for every category
 */
public record GrowthTable(String source, List<Row> rows) {

    /** The allowances of one category, in per cent. */
    public record Row(Category category, double guessedPercent, double calculatedPercent, double cataloguePercent) {

        public Row {
            Check.within("guessedPercent", guessedPercent, 0, 500, " %");
            Check.within("calculatedPercent", calculatedPercent, 0, 500, " %");
            Check.within("cataloguePercent", cataloguePercent, 0, 500, " %");
        }
    }

    /**
     * The project's own choice for builders' work between 2 and 25 kg. The order of the rows follows published practice (the
     * less is known and the more hands join it, the more it grows; see SAWE RP A-3), the figures are from no publication.
     */
    public static final GrowthTable OWN_CHOICE = new GrowthTable(
            "Ledgerwing's own choice for builders' work of 2 to 25 kg; from no publication",
            List.of(
                    new Row(Category.STRUCTURE, 20, 10, 3),
                    new Row(Category.FASTENING, 50, 30, 10),
                    new Row(Category.PROPULSION, 15, 8, 3),
                    new Row(Category.BATTERY, 12, 8, 3),
                    new Row(Category.SOLAR, 20, 10, 5),
                    new Row(Category.AVIONICS, 20, 10, 3),
                    new Row(Category.RADIO, 20, 10, 3),
                    new Row(Category.SERVO, 15, 8, 3),
                    new Row(Category.WIRING, 50, 30, 10),
                    new Row(Category.LANDING_GEAR, 20, 10, 3),
                    new Row(Category.PAYLOAD, 20, 10, 3),
                    new Row(Category.BALLAST, 10, 5, 2)));

    public GrowthTable {
        rows = List.copyOf(rows);
        Check.name("source", source);
        long categories = rows.stream().map(Row::category).distinct().count();
        Check.require(
                categories == Category.values().length && categories == rows.size(),
                "rows must name each of the " + Category.values().length + " categories once, were " + rows.size());
    }

    /** The allowance in per cent; 0 for a weighed mass. */
    public double percent(Category category, Basis basis) {
        Row row = rows.stream()
                .filter(each -> each.category() == category)
                .findFirst()
                .orElseThrow();
        return switch (basis) {
            case GUESSED -> row.guessedPercent();
            case CALCULATED -> row.calculatedPercent();
            case CATALOGUE -> row.cataloguePercent();
            case WEIGHED -> 0;
        };
    }
}
