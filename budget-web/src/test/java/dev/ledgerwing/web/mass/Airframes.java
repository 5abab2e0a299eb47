package dev.ledgerwing.web.mass;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import java.util.List;
import java.util.Map;

/** Small airframes to look at. */
final class Airframes {

    private Airframes() {}

    static Build blank(String code, MassBudget budget) {
        return Build.blank(new Airframe(code, "Airframe " + code, null, Stage.DESIGN, "nose tip"), budget);
    }

    /** A wing of 1000 g weighed and a nose of 500 g guessed. */
    static Build withTwoParts(String code, MassBudget budget) {
        return blank(code, budget)
                .withAssemblies(List.of(
                        new Assembly("wing", "Wing", Assembly.MovesWith.WING),
                        new Assembly("nose", "Nose", Assembly.MovesWith.NOSE)))
                .withLines(List.of(
                        line("L1", "wing", "Panels", LineMass.of(Mass.ofGrams(1000), Basis.WEIGHED)),
                        line("L2", "nose", "Shell", LineMass.of(Mass.ofGrams(500), Basis.GUESSED))));
    }

    static PartLine line(String id, String assembly, String name, LineMass mass) {
        return PartLine.named(id, assembly, name, Category.STRUCTURE, 1, mass);
    }

    static MassBudget target(double grams) {
        return new MassBudget(Mass.ofGrams(grams), null, null, null);
    }

    static MassBudget targetAndCeiling(double targetG, double ceilingG) {
        return new MassBudget(Mass.ofGrams(targetG), Mass.ofGrams(ceilingG), MassBudget.CeilingIs.AT_MOST, null);
    }

    /** With a flight case that carries some more than the design case. */
    static Build carrying(Build build, double grams) {
        LoadCase heavy = new LoadCase(
                "heavy",
                "With bottles",
                LoadCase.Purpose.FLIGHT,
                false,
                List.of(),
                Map.of(),
                List.of(),
                List.of(new LoadCase.ExtraItem("Bottles", Mass.ofGrams(grams), Basis.WEIGHED, null)));
        return build.withLoadCases(List.of(LoadCase.everythingAboard(), heavy));
    }
}
