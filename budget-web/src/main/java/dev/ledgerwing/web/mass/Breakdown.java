package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.mass.MassGroup;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.mass.MassTotal;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;

/**
 * The mass aboard in the design case, group by group.
 *
 * @param by what the groups are: Assembly or Category
 * @param total the sum of the groups; a booking belongs to none of them
 */
record Breakdown(String by, List<Row> rows, Row total) {

    static final double BAR = 100;

    /**
     * One group.
     *
     * @param atLeast whether a mass in it is not known
     * @param share of the predicted mass of all groups together
     * @param basicBar width of the basic mass in its bar, growthBar of what comes on top; the largest group fills the bar
     */
    record Row(
            String name,
            boolean atLeast,
            String basic,
            String growth,
            String predicted,
            String share,
            double basicBar,
            double growthBar) {}

    static List<Breakdown> of(MassStatement mass, Figures figures) {
        return List.of(
                new Breakdown.Maker(mass.byAssembly(), mass.total(), figures).made("Assembly"),
                new Breakdown.Maker(mass.byCategory(), mass.total(), figures).made("Category"));
    }

    private record Maker(List<MassGroup> groups, MassTotal whole, Figures figures) {

        Breakdown made(String by) {
            List<Row> rows = groups.stream()
                    .map(group -> row(group.title(), group.total()))
                    .toList();
            return new Breakdown(by, rows, row("All together", whole));
        }

        private Row row(String name, MassTotal total) {
            return new Row(
                    name,
                    !total.isComplete(),
                    figures.smallMass(total.basic()),
                    figures.smallMass(total.growth()),
                    figures.smallMass(total.predicted()),
                    share(total.predicted()),
                    width(total.basic()),
                    width(total.growth()));
        }

        private String share(Mass predicted) {
            return whole.predicted().mg() == 0
                    ? "–"
                    : Figures.percent(100.0 * predicted.mg() / whole.predicted().mg());
        }

        private double width(Mass part) {
            long largest = groups.stream()
                    .mapToLong(group -> group.total().predicted().mg())
                    .max()
                    .orElse(0);
            return largest == 0 ? 0 : Math.min(BAR, Math.round(10 * BAR * part.mg() / largest) / 10.0);
        }
    }
}
