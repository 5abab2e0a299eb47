package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.report.drawing.BalancePictures;
import dev.ledgerwing.report.drawing.Picture;
import java.util.List;

/**
 * The mass and balance sheet, ready to be printed: nothing in it needs computing. What is not known says so.
 *
 * @param datum what stations are measured from, in the builder's words
 * @param facts the balance, cell by cell
 * @param shape the wing and its limits, cell by cell; empty without a wing
 * @param planform the airframe from above, {@code strip} its masses along the fuselage
 * @param caution about the neutral point; empty where none is estimated
 */
public record BalanceSheet(
        SheetTitle title,
        String datum,
        VerdictMark mass,
        List<Fact> massFacts,
        VerdictMark balance,
        List<Fact> facts,
        List<Fact> shape,
        String massUnit,
        String lengthUnit,
        Picture planform,
        Picture strip,
        List<CaseEntry> cases,
        MomentTable moments,
        SupportGuide supports,
        List<StrapGuide> straps,
        List<WeighInEntry> weighIns,
        List<BookingEntry> bookings,
        List<FindingEntry> findings,
        String caution)
        implements PrintedSheet {

    public BalanceSheet {
        massFacts = List.copyOf(massFacts);
        facts = List.copyOf(facts);
        shape = List.copyOf(shape);
        cases = List.copyOf(cases);
        straps = List.copyOf(straps);
        weighIns = List.copyOf(weighIns);
        bookings = List.copyOf(bookings);
        findings = List.copyOf(findings);
    }

    /** The sheet of a reviewed build, in the units of the review. */
    public static BalanceSheet of(BuildReview review, SheetHead head) {
        Figures units = review.units();
        MassSummary mass = new MassSummary(review);
        BalanceSummary balance = new BalanceSummary(review);
        var neutralPoint = review.balance().shape().neutralPoint();
        return new BalanceSheet(
                SheetTitle.of(review.build().airframe(), head),
                review.build().airframe().datum(),
                mass.verdict(),
                mass.facts(),
                balance.verdict(),
                balance.facts(),
                balance.shape(),
                units.smallMassUnit(),
                units.lengthUnit(),
                BalancePictures.planform(review, units),
                BalancePictures.strip(review, units),
                review.balance().cases().stream()
                        .map(one -> CaseEntry.of(one, review))
                        .toList(),
                MomentTable.of(review.balance(), units),
                SupportGuide.of(review.balance(), units),
                StrapGuide.of(review.balance(), units),
                WeighInEntry.of(review.build(), units),
                BookingEntry.of(review.build(), units),
                review.findings(Budget.BALANCE).stream().map(FindingEntry::of).toList(),
                neutralPoint == null ? "" : neutralPoint.caution());
    }

    @Override
    public String template() {
        return "sheets/balance";
    }
}
