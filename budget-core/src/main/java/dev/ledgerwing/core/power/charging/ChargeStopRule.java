package dev.ledgerwing.core.power.charging;

import static dev.ledgerwing.core.power.charging.ChargeAgainst.listed;
import static dev.ledgerwing.core.power.network.PowerWords.quoted;
import static dev.ledgerwing.core.power.network.PowerWords.volts;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What stops the charging of a pack: something automatic must, and the pilot should be able to. A radio switch must not be the only
 * guard. On loss of signal the charging is to be off.
 *
 * @param functions what the pilot commands
 */
record ChargeStopRule(PackCharge charge, List<RadioFunction> functions) {

    Finding finding() {
        List<String> unstoppable = charge.ways().stream()
                .filter(way -> way.array().stopFunction() == null)
                .map(way -> quoted(way.cells().name()))
                .toList();
        if (!charge.hasCutOff()) {
            return finding(Verdict.BREAKS, (unstoppable.isEmpty() ? onlyByRadio() : byNothing()) + onLoss());
        }
        String cutOff = "The charging of " + name() + " is cut off by itself at " + fullV();
        Verdict onLoss = isSaid() ? Verdict.HOLDS : Verdict.UNKNOWN;
        return unstoppable.isEmpty()
                ? finding(onLoss, cutOff + ", and the radio can stop it." + onLoss())
                : finding(
                        Verdict.TIGHT.worseOf(onLoss),
                        cutOff + ", but no function of the radio can stop the charging by " + listed(unstoppable)
                                + ": on loss of signal it goes on." + onLoss());
    }

    private List<RadioFunction> stops() {
        return functions.stream()
                .filter(function -> charge.ways().stream()
                        .anyMatch(way -> function.code().equals(way.array().stopFunction())))
                .toList();
    }

    private boolean isSaid() {
        return stops().stream().allMatch(function -> function.onSignalLoss() != null);
    }

    private String onLoss() {
        return stops().stream().map(ChargeStopRule::onLoss).collect(Collectors.joining());
    }

    private static String onLoss(RadioFunction stop) {
        return stop.onSignalLoss() == null
                ? " On loss of signal the charging is to be off: what " + quoted(stop.name())
                        + " is to do then is not said."
                : " On loss of signal " + quoted(stop.name()) + " is to be " + stop.onSignalLoss() + ".";
    }

    private String byNothing() {
        return "Nothing stops the sun from charging " + name()
                + " further than full: it needs a cut-off that works by itself at " + fullV() + ".";
    }

    private String onlyByRadio() {
        return "Only the radio can stop the sun from charging " + name()
                + " further than full: a radio switch must not be the only guard, it needs a cut-off that works by itself at "
                + fullV() + ".";
    }

    private String fullV() {
        return volts(charge.pack().fullV());
    }

    private String name() {
        return quoted(charge.battery().name());
    }

    private Finding finding(Verdict verdict, String sentence) {
        return ChargeAgainst.nothing(ChargingFindings.STOP, charge.battery().name())
                .finding(verdict, sentence);
    }
}
