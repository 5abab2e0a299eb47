package dev.ledgerwing.web.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.balance.weighing.BookingProposal;
import dev.ledgerwing.core.balance.weighing.Comparison;
import dev.ledgerwing.core.balance.weighing.Coordinate;
import dev.ledgerwing.core.balance.weighing.Significance;
import dev.ledgerwing.core.balance.weighing.WeighInDeeds.Choice;
import dev.ledgerwing.core.balance.weighing.WeighInReport;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Problem;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A weighing held against the ledger, ready to be shown.
 *
 * @param heading what it comes to, in a few words
 * @param rows scales against ledger, figure by figure; empty where the readings cannot be
 * @param refused why the readings cannot be
 * @param sentences what the difference means
 * @param notes what one has to know to read it; the questions first
 * @param booking what may be booked; null = nothing
 */
record ReportView(
        String heading,
        List<Row> rows,
        List<String> refused,
        List<String> sentences,
        List<String> notes,
        @Nullable BookingView booking) {

    /** Scales and ledger with their standard uncertainties, and what lies between them. */
    record Row(String what, String scales, String ledger, String difference, boolean isOff) {}

    /**
     * What may be booked.
     *
     * @param already what is booked now, {@code proposed} what would be booked then; empty = nothing
     * @param advised whether the difference is more than the scales can be off
     */
    record BookingView(String already, String proposed, boolean advised) {}

    static ReportView of(WeighInReport report, Figures figures) {
        return new ReportView(
                report.comparison().map(each -> heading(report, each.worst())).orElse("These readings cannot be"),
                report.comparison().map(each -> rows(each, figures)).orElse(List.of()),
                report.reading().refused().stream().map(Problem::sentence).toList(),
                report.words().difference(),
                Stream.of(
                                report.words().questions(),
                                unknown(report),
                                report.words().notes())
                        .flatMap(List::stream)
                        .toList(),
                report.proposal().map(each -> booking(each, figures)).orElse(null));
    }

    private static String heading(WeighInReport report, Significance worst) {
        boolean booked = report.proposal()
                .filter(proposal ->
                        proposal.before() != null && proposal.further().mg() == 0)
                .isPresent();
        if (booked && worst != Significance.AGREES) {
            return "The scales confirm what is booked";
        }
        return switch (worst) {
            case AGREES -> "Scales and ledger agree";
            case OFF -> "The ledger is off";
            case MORE_THAN_ADMITTED -> "The ledger is off by more than it admits";
        };
    }

    private static List<String> unknown(WeighInReport report) {
        return report.reading()
                .answer()
                .map(answer -> List.copyOf(answer.notKnown().values()))
                .orElse(List.of());
    }

    private static List<Row> rows(Comparison comparison, Figures figures) {
        List<Row> rows = new ArrayList<>();
        Mass ledger = Mass.ofGrams(comparison.ledger().massG());
        rows.add(new Row(
                "Mass",
                mass(comparison.scales().massG(), comparison.scales().massUncertaintyG(), figures),
                comparison.ledgerErrorsKnown()
                        ? mass(ledger.grams(), comparison.ledger().massUncertaintyG(), figures)
                        : figures.mass(ledger),
                figures.signedMass(Mass.ofGrams(comparison.massDifferenceG())),
                comparison.mass() != Significance.AGREES));
        for (Axis axis : Axis.values()) {
            comparison.centre(axis).ifPresent(centre -> rows.add(row(axis, centre, comparison, figures)));
        }
        return rows;
    }

    private static Row row(Axis axis, Comparison.Centre centre, Comparison comparison, Figures figures) {
        double mm = centre.differenceMm();
        return new Row(
                switch (axis) {
                    case X -> "CG aft";
                    case Y -> "CG to the right";
                    case Z -> "CG up";
                },
                coordinate(centre.scales(), figures),
                comparison.ledgerErrorsKnown()
                        ? coordinate(centre.ledger(), figures)
                        : figures.length(centre.ledger().length()),
                (mm > 0 ? "+" : "") + figures.length(Length.ofMm(mm)),
                centre.significance() != Significance.AGREES);
    }

    private static String mass(double grams, double uncertaintyG, Figures figures) {
        return figures.mass(Mass.ofGrams(grams)) + " ± " + figures.roughMass(Mass.ofGrams(uncertaintyG));
    }

    private static String coordinate(Coordinate at, Figures figures) {
        return figures.length(at.length()) + " ± " + figures.length(at.uncertainty());
    }

    private static BookingView booking(BookingProposal proposal, Figures figures) {
        return new BookingView(
                booked(proposal.before(), figures), booked(proposal.proposed(), figures), proposal.advised());
    }

    private static String booked(@Nullable Booking booking, Figures figures) {
        return booking == null ? "" : figures.signedMass(booking.mass());
    }

    /** What recording it does, in a few words for the history; always in grams. */
    static String outcome(WeighInReport report, Choice choice) {
        String scales = report.reading()
                .answer()
                .map(answer -> Figures.METRIC.mass(answer.mass()))
                .orElse("readings refused");
        BookingProposal proposal = report.proposal().orElse(null);
        if (proposal == null || choice == Choice.LEAVE) {
            return scales;
        }
        boolean books = choice == Choice.BOOK || (choice == Choice.AS_ADVISED && proposal.advised());
        Booking booking = books ? proposal.proposed() : null;
        return scales + (booking == null ? ", nothing booked" : ", " + booked(booking, Figures.METRIC) + " booked");
    }
}
