package dev.ledgerwing.report.site;

import dev.ledgerwing.report.sheet.Fact;
import dev.ledgerwing.report.sheet.MassBar;
import dev.ledgerwing.report.sheet.VerdictMark;
import java.util.List;

/**
 * One airframe in the table of the fleet.
 *
 * @param sheet address of its build sheet
 * @param sheets where each of its sheets is
 * @param described the bar in words
 * @param cg where the design case balances, {@code band} where it may
 * @param powerMargin what is left of the rating nearest to its end
 * @param channels how many are needed, {@code shared} how many pairs of functions share one
 */
public record FleetRow(
        String name,
        String stage,
        String sheet,
        List<SheetLinks> sheets,
        VerdictMark mass,
        MassBar bar,
        String described,
        Fact predicted,
        Fact target,
        Fact margin,
        VerdictMark balance,
        Fact cg,
        Fact band,
        VerdictMark power,
        Fact powerMargin,
        Fact endurance,
        VerdictMark radio,
        Fact channels,
        Fact shared,
        VerdictMark outputs,
        Fact outputsNeeded,
        String fingerprint) {

    public FleetRow {
        sheets = List.copyOf(sheets);
    }
}
