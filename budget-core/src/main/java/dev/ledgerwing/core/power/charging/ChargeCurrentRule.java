package dev.ledgerwing.core.power.charging;

import static dev.ledgerwing.core.power.charging.ChargeAgainst.listed;
import static dev.ledgerwing.core.power.network.PowerWords.amperes;
import static dev.ledgerwing.core.power.network.PowerWords.quoted;

import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The most that full sun pushes into a pack, with everything else off, against what the pack bears. */
record ChargeCurrentRule(PackCharge charge, PowerRules rules) {

    Finding finding() {
        Double worstA = charge.worstA();
        Double limitA = charge.pack().maxChargeA();
        if (worstA == null || limitA == null) {
            return finding(
                    Verdict.UNKNOWN,
                    "How fast the sun may charge " + name() + " is not known: enter " + missing() + ".");
        }
        String push = "In full sun with everything else off up to " + amperes(worstA) + " flow into " + name();
        if (worstA > limitA) {
            return finding(Verdict.BREAKS, push + ", more than the " + amperes(limitA) + " it may be charged with.");
        }
        String bears = push + ", it may be charged with " + amperes(limitA);
        return worstA > limitA * (1 - rules.sourceReserve() / 100)
                ? finding(
                        Verdict.TIGHT,
                        bears + ": less than " + Figures.percent(rules.sourceReserve())
                                + " is left, and between clouds the sun is stronger for moments.")
                : finding(Verdict.HOLDS, bears + ".");
    }

    private String missing() {
        Pack pack = charge.pack().pack();
        List<String> ofPack = Missing.of()
                .when(pack.cellCapacityMah(), "the capacity")
                .when(pack.maxChargeC(), "the charging rate")
                .words();
        return Stream.concat(
                        charge.ways().stream().map(way -> words(way.missing(), way.cells())),
                        Stream.of(words(ofPack, charge.battery())))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static String words(List<String> missing, PowerSource of) {
        return missing.isEmpty() ? "" : listed(missing) + " of " + quoted(of.name());
    }

    private String name() {
        return quoted(charge.battery().name());
    }

    private Finding finding(Verdict verdict, String sentence) {
        return ChargeAgainst.most(
                        ChargingFindings.CURRENT,
                        charge.battery().name(),
                        charge.worstA(),
                        charge.pack().maxChargeA())
                .inA()
                .finding(verdict, sentence);
    }
}
