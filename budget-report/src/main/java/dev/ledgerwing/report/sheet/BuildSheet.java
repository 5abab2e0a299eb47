package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import java.util.List;

/**
 * The build sheet, ready to be printed: nothing in it needs computing. What is not known says so.
 *
 * @param mass the verdict of the mass budget
 * @param facts the mass summary, cell by cell
 * @param balance the verdict of the balance budget, {@code balanceFacts} its summary
 * @param massUnit unit of the columns of masses, lengthUnit of the stations
 * @param groups the parts aboard by assembly
 * @param totals basic mass, what comes on top of it, and the predicted mass
 * @param notAboard parts that stay at home in the design load case, in no sum; without parts where there are none
 */
public record BuildSheet(
        SheetTitle title,
        VerdictMark mass,
        List<Fact> facts,
        MassBar bar,
        VerdictMark balance,
        List<Fact> balanceFacts,
        String massUnit,
        String lengthUnit,
        List<PartGroup> groups,
        List<Fact> totals,
        PartGroup notAboard,
        List<FindingEntry> findings)
        implements PrintedSheet {

    public BuildSheet {
        facts = List.copyOf(facts);
        balanceFacts = List.copyOf(balanceFacts);
        groups = List.copyOf(groups);
        totals = List.copyOf(totals);
        findings = List.copyOf(findings);
    }

    /** The sheet of a reviewed build, in the units of the review. */
    public static BuildSheet of(BuildReview review, SheetHead head) {
        Figures units = review.units();
        MassSummary summary = new MassSummary(review);
        BalanceSummary balance = new BalanceSummary(review);
        PartsOfSheet parts = new PartsOfSheet(review.mass(), units);
        return new BuildSheet(
                SheetTitle.of(review.build().airframe(), head),
                summary.verdict(),
                summary.facts(),
                MassBar.of(review.massForecast()),
                balance.verdict(),
                balance.facts(),
                units.smallMassUnit(),
                units.lengthUnit(),
                parts.groups(),
                summary.totals(),
                parts.notAboard(),
                review.findings().stream().map(FindingEntry::of).toList());
    }

    @Override
    public String template() {
        return "sheets/build";
    }
}
