package dev.ledgerwing.core.power.charging;

import static dev.ledgerwing.core.power.charging.ChargeAgainst.celsius;
import static dev.ledgerwing.core.power.charging.ChargeAgainst.listed;
import static dev.ledgerwing.core.power.network.PowerWords.quoted;
import static dev.ledgerwing.core.power.network.PowerWords.volts;

import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Optional;

/**
 * Cells that lie straight on a pack: cold, their open voltage may be above the full pack. A tracker makes the voltage of its own, so nothing
 * follows from the cells there.
 */
record OverchargeRule(ChargeWay way, PowerRules rules) {

    Optional<Finding> finding() {
        if (!way.isDirect()) {
            return Optional.empty();
        }
        Double openV = new CellVolts(way.array()).openV(rules.coldestCellInForce());
        return Optional.of(openV == null ? notKnown() : judged(openV));
    }

    private Finding judged(double openV) {
        String cold = "At " + celsius(rules.coldestCellInForce()) + " the open cells of " + cells() + " stand at "
                + volts(openV);
        String full = volts(way.fullV()) + " of " + pack() + " when full";
        ChargeAgainst against = ChargeAgainst.most(
                        ChargingFindings.OVERCHARGE, way.battery().name(), openV, way.fullV())
                .inV();
        if (openV <= way.fullV()) {
            return against.finding(Verdict.HOLDS, cold + ", not above the " + full + ".");
        }
        String over = cold + ", above the " + full + ": they can overcharge it, ";
        return way.pack().automaticCutOff()
                ? against.finding(Verdict.HOLDS, over + "and the cut-off must stop it.")
                : against.finding(Verdict.BREAKS, over + "a stop is required.");
    }

    private Finding notKnown() {
        String missing = listed(Missing.of()
                .when(way.array().openCircuitV(), "the open-circuit voltage")
                .when(way.array().voltagePercentPerC(), "the change of voltage with temperature")
                .words());
        return ChargeAgainst.most(ChargingFindings.OVERCHARGE, way.battery().name(), null, way.fullV())
                .inV()
                .finding(
                        Verdict.UNKNOWN,
                        "Whether cold cells could charge " + pack() + " further than full is not known: enter "
                                + missing + " of " + cells() + ".");
    }

    private String cells() {
        return quoted(way.cells().name());
    }

    private String pack() {
        return quoted(way.battery().name());
    }
}
