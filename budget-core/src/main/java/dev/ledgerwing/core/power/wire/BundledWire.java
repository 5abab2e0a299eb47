package dev.ledgerwing.core.power.wire;

import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.quantity.Figures;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Copper wire in bundles: FAA AC 43.13-1B CHG 1, Table 11-9. Its values hold in a bundle of 33 or more wires (9 or more from 8 AWG on)
 * with not more than 20 % of the harness in use, at 70 °C around it and 60 000 ft: never derate them again. Of an odd gauge the next
 * thinner one of the table is taken.
 */
final class BundledWire {

    private static final String TABLE = "FAA AC 43.13-1B Table 11-9";

    /** What the insulation of a column bears, °C, in its order. */
    private static final double[] COLUMNS_C = {105, 150, 200};

    /** Amperes by gauge, a column for each of {@link #COLUMNS_C}. */
    private static final NavigableMap<Integer, double[]> ROWS_A = new TreeMap<>(Map.ofEntries(
            Map.entry(24, new double[] {2.5, 4, 5}),
            Map.entry(22, new double[] {3, 5, 6}),
            Map.entry(20, new double[] {4, 7, 9}),
            Map.entry(18, new double[] {6, 9, 12}),
            Map.entry(16, new double[] {7, 11, 14}),
            Map.entry(14, new double[] {10, 14, 18}),
            Map.entry(12, new double[] {13, 19, 25}),
            Map.entry(10, new double[] {17, 26, 32}),
            Map.entry(8, new double[] {38, 57, 71}),
            Map.entry(6, new double[] {50, 76, 97}),
            Map.entry(4, new double[] {68, 103, 133}),
            Map.entry(2, new double[] {95, 141, 179})));

    private BundledWire() {}

    static Ampacity ampacity(WireRun run) {
        Map.Entry<Integer, double[]> row = ROWS_A.ceilingEntry(run.awg());
        if (row == null || run.awg() < ROWS_A.firstKey()) {
            return Ampacity.outside(run.awg(), TABLE + ", which has 24 to 2 AWG");
        }
        Double insulationC = run.insulationC();
        if (insulationC == null) {
            return Ampacity.notKnown("what the insulation bears is not recorded, and " + TABLE + " goes by it");
        }
        int column = column(insulationC);
        if (column < 0) {
            return Ampacity.notKnown("the insulation bears " + celsius(insulationC) + " and " + TABLE + " begins at "
                    + celsius(COLUMNS_C[0]));
        }
        return new Ampacity(row.getValue()[column], false, source(run.awg(), row.getKey(), column));
    }

    /** The hottest column that the insulation bears; -1 = none. */
    private static int column(double insulationC) {
        int column = -1;
        while (column + 1 < COLUMNS_C.length && insulationC >= COLUMNS_C[column + 1]) {
            column++;
        }
        return column;
    }

    private static String source(int awg, int ofRow, int column) {
        return TABLE + ", " + celsius(COLUMNS_C[column]) + " insulation, in a bundle at 70\u2009°C"
                + thinner(awg, ofRow);
    }

    static String thinner(int awg, int ofRow) {
        return awg == ofRow ? "" : ", value of " + WireGauge.of(ofRow).label() + " as the next thinner in it";
    }

    private static String celsius(double degrees) {
        return Figures.number(degrees, 0) + "\u2009°C";
    }
}
