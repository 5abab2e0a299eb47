package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.balance.BalanceGroup;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.BalanceSum;
import dev.ledgerwing.core.balance.CaseBalance;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.LengthUnit;
import dev.ledgerwing.core.quantity.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Masses and first moments of the design load case by assembly. Moments are rounded so that each column adds up to its total: every
 * subtotal on the way down is right to the last digit shown.
 *
 * @param unit of the moments
 */
public record MomentTable(String unit, List<MomentRow> rows, MomentRow total) {

    /** Basic mass with its three moments, and predicted mass with its moment along x. */
    public record MomentRow(
            String name, String mass, String x, String y, String z, String predicted, String predictedX) {}

    public MomentTable {
        rows = List.copyOf(rows);
    }

    public static MomentTable of(BalanceStatement statement, Figures units) {
        CaseBalance design = statement.design();
        List<BalanceGroup> groups = statement.byAssembly(design).stream()
                .filter(group ->
                        !group.rows().isEmpty() || group.booked().mass().mg() != 0)
                .toList();
        String missing = design.isKnown() ? "" : "at least ";
        return new Writer(units, groups).table(design.basic(), design.predicted(), missing);
    }

    private record Writer(Figures units, List<BalanceGroup> groups) {

        private static final int DECIMALS_OF_INCHES = 2;

        MomentTable table(BalanceSum basic, BalanceSum predicted, String atLeast) {
            List<String> x = column(group -> group.basic().moments().x());
            List<String> y = column(group -> group.basic().moments().y());
            List<String> z = column(group -> group.basic().moments().z());
            List<String> then = column(group -> group.predicted().moments().x());
            List<MomentRow> rows = new ArrayList<>();
            for (int row = 0; row < groups.size(); row++) {
                BalanceGroup group = groups.get(row);
                rows.add(new MomentRow(
                        group.title(),
                        units.smallMass(group.basic().mass()),
                        x.get(row),
                        y.get(row),
                        z.get(row),
                        units.smallMass(group.predicted().mass()),
                        then.get(row)));
            }
            Moments sum = basic.moments();
            MomentRow total = new MomentRow(
                    "Total",
                    atLeast + units.smallMass(basic.mass()),
                    shown(rounded(sum.x())),
                    shown(rounded(sum.y())),
                    shown(rounded(sum.z())),
                    atLeast + units.smallMass(predicted.mass()),
                    shown(rounded(predicted.moments().x())));
            return new MomentTable(units.smallMassUnit() + "\u2009" + units.lengthUnit(), rows, total);
        }

        private List<String> column(Function<BalanceGroup, Moment> moment) {
            List<String> column = new ArrayList<>();
            Moment sum = Moment.ZERO;
            for (BalanceGroup group : groups) {
                Moment next = sum.plus(moment.apply(group));
                column.add(shown(rounded(next) - rounded(sum)));
                sum = next;
            }
            return column;
        }

        /** In steps of the last digit shown. */
        private long rounded(Moment moment) {
            return Math.round(moment.gMm() / step());
        }

        private String shown(long steps) {
            return Figures.number(steps * Math.pow(10, -decimals()), decimals());
        }

        private double step() {
            return units.units().massUnit().inGrams() * lengthUnit().inMm() * Math.pow(10, -decimals());
        }

        private int decimals() {
            return lengthUnit() == LengthUnit.IN ? DECIMALS_OF_INCHES : 0;
        }

        private LengthUnit lengthUnit() {
            return units.units().lengthUnit();
        }
    }
}
