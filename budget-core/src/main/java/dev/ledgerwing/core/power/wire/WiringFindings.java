package dev.ledgerwing.core.power.wire;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Collectors;

/** Whether the ledger knows the wires that are drawn. */
public final class WiringFindings {

    public static final String MASS = "power.wiring-mass";

    private final WiringMass wiring;
    private final Figures figures;

    private WiringFindings(WiringMass wiring, Figures figures) {
        this.wiring = wiring;
        this.figures = figures;
    }

    /** One finding where any wire is drawn, none where there is nothing to compare. */
    public static List<Finding> of(Build build, Figures figures) {
        WiringMass wiring = WiringMass.of(build);
        return wiring.drawn().equals(Mass.ZERO) ? List.of() : List.of(new WiringFindings(wiring, figures).mass());
    }

    private Finding mass() {
        String drawn = "The wires that are drawn weigh about " + figures.roughMass(wiring.drawn());
        if (wiring.missing().mg() <= 0) {
            return finding(Verdict.HOLDS, drawn + ", the ledger counts " + ledger() + " of wiring.");
        }
        if (!wiring.linesWithoutMass().isEmpty()) {
            return finding(
                    Verdict.UNKNOWN,
                    drawn + ", the ledger counts " + ledger() + " and has no mass yet for " + withoutMass()
                            + ": whether it knows them all is not known.");
        }
        return finding(
                Verdict.TIGHT,
                drawn + ", " + figures.roughMass(wiring.missing()) + " more than the " + ledger()
                        + " of wiring in the ledger: weigh the harness, or enter what is missing.");
    }

    private String ledger() {
        return figures.mass(wiring.inLedger());
    }

    private String withoutMass() {
        return wiring.linesWithoutMass().stream()
                .map(PartLine::name)
                .map(name -> "“" + name + "”")
                .collect(Collectors.joining(", "));
    }

    private Finding finding(Verdict verdict, String sentence) {
        return new Finding(
                MASS,
                Budget.POWER,
                verdict,
                "Wiring",
                null,
                wiring.drawn().grams(),
                wiring.inLedger().grams(),
                Mass.ZERO.minus(wiring.missing()).grams(),
                "g",
                sentence,
                List.of());
    }
}
