package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;

/** Says what lies between scales and ledger and what it means. */
record DifferenceWords(WeighInReport report, Figures figures) {

    List<String> all() {
        List<String> said = new ArrayList<>();
        report.comparison().ifPresent(comparison -> {
            said.add(mass(comparison));
            for (Axis axis : Axis.values()) {
                comparison.centre(axis).ifPresent(centre -> said.add(centre(axis, centre)));
            }
            report.implied().ifPresent(implied -> said.add(implied(implied, comparison.massDifferenceG())));
        });
        report.proposal().ifPresent(proposal -> booked(proposal, said));
        return said;
    }

    private String mass(Comparison comparison) {
        Mass difference = Mass.ofGrams(comparison.massDifferenceG());
        String apart = "The scales say " + figures.mass(Mass.ofGrams(Math.abs(comparison.massDifferenceG())))
                + (difference.isNegative() ? " less" : " more") + " than the ledger";
        String scalesOff =
                figures.roughMass(Mass.ofGrams(2 * comparison.scales().massUncertaintyG()));
        return switch (comparison.mass()) {
            case AGREES ->
                "Scales and ledger agree: " + figures.signedMass(difference) + ", and the scales may be off by "
                        + scalesOff + ".";
            case OFF -> apart + ", and may be off by " + scalesOff + ": the ledger is off, book it.";
            case MORE_THAN_ADMITTED ->
                apart + ", more than both admit (" + figures.roughMass(admitted(comparison)) + "): "
                        + advice(difference) + ".";
        };
    }

    private static Mass admitted(Comparison comparison) {
        return Mass.ofGrams(2
                * Math.hypot(
                        comparison.scales().massUncertaintyG(),
                        comparison.ledger().massUncertaintyG()));
    }

    private String advice(Mass difference) {
        if (!report.ledger().withoutMass().isEmpty() && !difference.isNegative()) {
            return "it may be the parts without a mass";
        }
        return difference.isNegative()
                ? "look for a line that is counted twice, or was not aboard"
                : "look for a missing line";
    }

    private String centre(Axis axis, Comparison.Centre centre) {
        double mm = centre.differenceMm();
        String apart = figures.length(Length.ofMm(Math.abs(mm))) + " " + axis.words(mm);
        String scalesOff = figures.length(Length.ofMm(2 * centre.scales().uncertaintyMm()));
        return switch (centre.significance()) {
            case AGREES ->
                "They agree on the CG along " + axis.letter() + ": " + apart + ", and the scales may be off by "
                        + scalesOff + ".";
            case OFF -> "The scales put the CG " + apart + " than the ledger, and may be off by " + scalesOff + ".";
            case MORE_THAN_ADMITTED ->
                "The scales put the CG " + apart + " than the ledger, more than both admit ("
                        + figures.length(Length.ofMm(2
                                * Math.hypot(
                                        centre.scales().uncertaintyMm(),
                                        centre.ledger().uncertaintyMm())))
                        + "): something is missing or sits elsewhere.";
        };
    }

    private String implied(ImpliedStation implied, double differenceG) {
        ScalesWords words = new ScalesWords(figures);
        List<String> at = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            Coordinate coordinate = implied.at().get(axis);
            if (coordinate != null) {
                at.add(words.coordinate(axis, coordinate));
            }
        }
        String where = String.join("; ", at);
        String what = differenceG < 0 ? "one part too many" : "one missing part";
        return implied.withinAirframe()
                ? "Were it " + what + ", it would sit at " + where + "."
                : "It is not " + what + ": that would sit outside the airframe, at " + where + ".";
    }

    private void booked(BookingProposal proposal, List<String> said) {
        Booking before = proposal.before();
        if (before == null) {
            return;
        }
        String already = figures.signedMass(before.mass()) + " is booked already";
        said.add(
                proposal.further().mg() == 0
                        ? already + ": nothing new to book."
                        : already + ", new is " + figures.signedMass(proposal.further()) + ".");
    }
}
