package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;

/** Says what the ledger says of what stood on the scales. */
record LedgerWords(WeighInReport report, Figures figures) {

    List<String> all() {
        List<String> said = new ArrayList<>();
        report.comparison().ifPresent(comparison -> say(comparison, said));
        if (report.revised()) {
            Mass then = report.weighIn().ledger().mass();
            Mass now = report.ledger().mass();
            said.add("It was revised since: the parts that are still the same add up to " + figures.mass(now) + " now, "
                    + figures.signedMass(now.minus(then)) + ".");
        }
        return said;
    }

    private void say(Comparison comparison, List<String> said) {
        Mass mass = Mass.ofGrams(comparison.ledger().massG());
        ScalesWords words = new ScalesWords(figures);
        if (report.revised()) {
            said.add("The ledger said " + figures.mass(mass) + " of the same that day.");
        } else {
            String bookings = mass.equals(report.ledger().mass()) ? "" : ", bookings of assemblies among it";
            said.add("The ledger says " + figures.mass(mass) + " of the same" + bookings + ", standard uncertainty "
                    + words.uncertainty(comparison.ledger().massUncertaintyG()) + ".");
        }
        for (Axis axis : Axis.values()) {
            comparison
                    .centre(axis)
                    .map(Comparison.Centre::ledger)
                    .ifPresent(at -> said.add("It puts the CG at "
                            + (report.revised()
                                    ? axis.letter() + " = " + figures.length(at.length())
                                    : words.coordinate(axis, at))
                            + "."));
        }
    }
}
