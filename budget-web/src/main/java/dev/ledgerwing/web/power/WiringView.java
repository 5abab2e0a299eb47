package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.power.wire.WiringFindings;
import dev.ledgerwing.core.power.wire.WiringMass;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Finding;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the wires weigh that are drawn, against the ledger's lines of wiring.
 *
 * @param withoutMass lines of wiring that say no mass, by name; empty where all do
 */
record WiringView(
        String drawn,
        String inLedger,
        String withoutMass,
        @Nullable Finding finding) {

    static WiringView of(WiringMass mass, BuildReview review) {
        Figures figures = review.units();
        return new WiringView(
                figures.roughMass(mass.drawn()),
                figures.mass(mass.inLedger()),
                mass.linesWithoutMass().stream().map(PartLine::name).collect(Collectors.joining(", ")),
                review.finding(WiringFindings.MASS).orElse(null));
    }
}
