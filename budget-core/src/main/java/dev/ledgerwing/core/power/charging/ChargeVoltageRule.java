package dev.ledgerwing.core.power.charging;

import static dev.ledgerwing.core.power.charging.ChargeAgainst.celsius;
import static dev.ledgerwing.core.power.charging.ChargeAgainst.listed;
import static dev.ledgerwing.core.power.network.PowerWords.quoted;
import static dev.ledgerwing.core.power.network.PowerWords.volts;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Cells that lie straight on a pack: cold, their open voltage may be above the full pack; hot, their best point may be below it. A tracker
 * makes the voltage of its own, so nothing follows from the cells there.
 */
record ChargeVoltageRule(ChargeWay way, PowerRules rules) {

    Stream<Finding> findings() {
        return way.array().connection() == SolarArray.Connection.DIRECT
                ? Stream.of(overcharge(), fill())
                : Stream.empty();
    }

    private Finding overcharge() {
        double coldC = rules.coldestCellInForce();
        Double openV = new CellVolts(way.array()).openV(coldC);
        ChargeAgainst against = ChargeAgainst.most(ChargingFindings.OVERCHARGE, subject(), openV, fullV());
        if (openV == null) {
            return unknown(against, "Whether cold cells could charge " + pack() + " further than full", missingOpen());
        }
        String cold = "At " + celsius(coldC) + " the open cells of " + cells() + " stand at " + volts(openV);
        if (openV <= fullV()) {
            return against.inV()
                    .finding(
                            Verdict.HOLDS,
                            cold + ", not above the " + volts(fullV()) + " of " + pack() + " when full.");
        }
        boolean guarded = way.pack().automaticCutOff();
        return against.inV()
                .finding(
                        guarded ? Verdict.HOLDS : Verdict.BREAKS,
                        cold + ", above the " + volts(fullV()) + " of " + pack()
                                + " when full: they can overcharge it, "
                                + (guarded ? "and the cut-off must stop it." : "a stop is required."));
    }

    private Finding fill() {
        double hotC = rules.hottestCellInForce();
        Double bestV = new CellVolts(way.array()).bestV(hotC);
        Double diodesV = diodesV();
        Double arrivesV = bestV == null ? null : bestV - (diodesV == null ? 0 : diodesV);
        ChargeAgainst against = ChargeAgainst.least(ChargingFindings.FILL, subject(), arrivesV, fullV());
        if (arrivesV == null) {
            return unknown(against, "Whether hot cells get " + pack() + " full", missingBest());
        }
        String hot = "At " + celsius(hotC) + " the cells of " + cells() + " give their power at " + volts(arrivesV)
                + (diodesV != null && diodesV > 0 ? " behind the diode" : "");
        if (arrivesV < fullV()) {
            return against.inV()
                    .finding(
                            Verdict.TIGHT,
                            hot + ", below the " + volts(fullV()) + " of " + pack()
                                    + " when full: hot cells never fill it.");
        }
        return diodesV == null
                ? unknown(
                        against,
                        "Whether hot cells get " + pack() + " full",
                        "the voltage lost in the diode behind " + cells())
                : against.inV()
                        .finding(
                                Verdict.HOLDS,
                                hot + ", enough for the " + volts(fullV()) + " of " + pack() + " when full.");
    }

    /** Lost in the diodes on the way; null = one of them is not known. */
    private @Nullable Double diodesV() {
        double sumV = 0;
        for (FeedElement element :
                elements().filter(each -> each.kind() == Kind.DIODE).toList()) {
            Double forwardV = element.forwardV();
            if (forwardV == null) {
                return null;
            }
            sumV += forwardV;
        }
        return sumV;
    }

    private Stream<FeedElement> elements() {
        return way.feeds().stream().flatMap(feed -> feed.elements().stream());
    }

    private Finding unknown(ChargeAgainst against, String question, String missing) {
        return against.inV().finding(Verdict.UNKNOWN, question + " is not known: enter " + missing + ".");
    }

    private String missingOpen() {
        return ofCells(Missing.of()
                .when(way.array().openCircuitV(), "the open-circuit voltage")
                .when(way.array().voltagePercentPerC(), "the change of voltage with temperature")
                .words());
    }

    private String missingBest() {
        return ofCells(Missing.of()
                .when(way.array().maxPowerV(), "the voltage of greatest power")
                .when(way.array().openCircuitV(), "the open-circuit voltage")
                .when(way.array().voltagePercentPerC(), "the change of voltage with temperature")
                .words());
    }

    private String ofCells(List<String> missing) {
        return listed(missing) + " of " + cells();
    }

    private double fullV() {
        return new PackCharge(way.battery(), List.of(way)).pack().fullV();
    }

    private String subject() {
        return way.battery().name();
    }

    private String cells() {
        return quoted(way.cells().name());
    }

    private String pack() {
        return quoted(way.battery().name());
    }
}
