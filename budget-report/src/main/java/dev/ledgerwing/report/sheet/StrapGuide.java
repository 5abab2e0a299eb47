package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.correction.StrapCell;
import dev.ledgerwing.core.balance.correction.StrapCell.StrapRange;
import dev.ledgerwing.core.balance.correction.StrapRow;
import dev.ledgerwing.core.balance.correction.StrapTable;
import dev.ledgerwing.core.quantity.Figures;
import java.util.List;

/** Where to strap one battery pack in each flight case, as read with a ruler. */
public record StrapGuide(String pack, String measured, List<Strap> straps) {

    /**
     * One load case.
     *
     * @param place {@code 112 mm}, or {@code cannot}
     * @param note from where to where it may be, or why it cannot be done
     */
    public record Strap(String loadCase, String place, String note) {}

    public StrapGuide {
        straps = List.copyOf(straps);
    }

    public static List<StrapGuide> of(BalanceStatement statement, Figures units) {
        return StrapTable.of(statement).rows().stream()
                .map(row -> new StrapGuide(
                        row.pack().name(),
                        row.position().words(units),
                        row.cells().stream()
                                .map(cell -> strap(row, cell, units))
                                .toList()))
                .toList();
    }

    private static Strap strap(StrapRow row, StrapCell cell, Figures units) {
        StrapRange range = cell.range();
        return range == null
                ? new Strap(cell.caseName(), "cannot", cell.reason(units))
                : new Strap(
                        cell.caseName(),
                        units.length(row.position().read(range.bestXMm())),
                        "from " + units.lengthNumber(row.position().read(range.foremostXMm())) + " to "
                                + units.length(row.position().read(range.aftmostXMm())));
    }
}
