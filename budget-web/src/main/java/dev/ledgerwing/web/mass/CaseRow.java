package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.mass.CaseMass;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.quantity.Figures;
import java.util.List;

/**
 * What one load case weighs.
 *
 * @param atLeast whether a mass aboard is not known
 * @param note what is judged in this case; empty = nothing
 */
record CaseRow(String name, String purpose, boolean atLeast, String basic, String predicted, String note) {

    static List<CaseRow> of(MassStatement mass, Figures figures) {
        return mass.cases().stream().map(each -> row(each, mass, figures)).toList();
    }

    private static CaseRow row(CaseMass each, MassStatement mass, Figures figures) {
        return new CaseRow(
                each.loadCase().name(),
                each.isFlight() ? "flight" : "ground",
                !each.total().isComplete(),
                figures.mass(each.basic()),
                figures.mass(each.predicted()),
                note(each, mass));
    }

    private static String note(CaseMass each, MassStatement mass) {
        boolean heaviest = each.loadCase().equals(mass.heaviestFlight().loadCase());
        boolean ceiling = mass.build().budget().ceilingMass() != null;
        String target = each.loadCase().design() ? "design case: the target is judged here" : "";
        if (!heaviest) {
            return target;
        }
        String judged = "heaviest in flight" + (ceiling ? ": the ceiling is judged here" : "");
        return target.isEmpty() ? judged : target + "; " + judged;
    }
}
