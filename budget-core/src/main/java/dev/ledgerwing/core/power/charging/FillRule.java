package dev.ledgerwing.core.power.charging;

import static dev.ledgerwing.core.power.charging.ChargeAgainst.celsius;
import static dev.ledgerwing.core.power.charging.ChargeAgainst.listed;
import static dev.ledgerwing.core.power.network.PowerWords.quoted;
import static dev.ledgerwing.core.power.network.PowerWords.volts;

import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Cells that lie straight on a pack: hot, the voltage at which they give their power may be below the full pack. What diodes on the way take
 * is off it.
 */
record FillRule(ChargeWay way, PowerRules rules) {

    Optional<Finding> finding() {
        if (!way.isDirect()) {
            return Optional.empty();
        }
        Double bestV = new CellVolts(way.array()).bestV(rules.hottestCellInForce());
        return Optional.of(bestV == null ? notKnown(null, missing()) : judged(bestV));
    }

    private Finding judged(double bestV) {
        Double diodesV = way.diodesV();
        double lostV = diodesV == null ? 0 : diodesV;
        double arrivesV = bestV - lostV;
        String hot = "At " + celsius(rules.hottestCellInForce()) + " the cells of " + cells() + " give their power at "
                + volts(arrivesV)
                + (lostV > 0 ? " behind the diode" : "");
        String full = volts(way.fullV()) + " of " + pack() + " when full";
        if (arrivesV < way.fullV()) {
            return against(arrivesV).finding(Verdict.TIGHT, hot + ", below the " + full + ": hot cells never fill it.");
        }
        return diodesV == null
                ? notKnown(arrivesV, "the voltage lost in the diode behind " + cells())
                : against(arrivesV).finding(Verdict.HOLDS, hot + ", enough for the " + full + ".");
    }

    private Finding notKnown(@Nullable Double arrivesV, String missing) {
        return against(arrivesV)
                .finding(
                        Verdict.UNKNOWN,
                        "Whether hot cells get " + pack() + " full is not known: enter " + missing + ".");
    }

    private String missing() {
        return listed(Missing.of()
                        .when(way.array().maxPowerV(), "the voltage of greatest power")
                        .when(way.array().openCircuitV(), "the open-circuit voltage")
                        .when(way.array().voltagePercentPerC(), "the change of voltage with temperature")
                        .words())
                + " of " + cells();
    }

    private ChargeAgainst against(@Nullable Double arrivesV) {
        return ChargeAgainst.least(ChargingFindings.FILL, way.battery().name(), arrivesV, way.fullV())
                .inV();
    }

    private String cells() {
        return quoted(way.cells().name());
    }

    private String pack() {
        return quoted(way.battery().name());
    }
}
