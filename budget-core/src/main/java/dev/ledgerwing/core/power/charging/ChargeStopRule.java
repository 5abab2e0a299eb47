package dev.ledgerwing.core.power.charging;

import static dev.ledgerwing.core.power.charging.ChargeAgainst.listed;
import static dev.ledgerwing.core.power.network.PowerWords.quoted;
import static dev.ledgerwing.core.power.network.PowerWords.volts;

import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;

/**
 * What stops the charging of a pack: something automatic must, and the pilot should be able to. A radio switch must not be the only
 * guard.
 */
record ChargeStopRule(PackCharge charge) {

    /** Which state a function takes without a signal is recorded with the radio. */
    private static final String SIGNAL_LOSS =
            " On loss of signal the charging is to be off: whether it is, is not recorded yet.";

    Finding finding() {
        List<String> unstoppable = charge.ways().stream()
                .filter(way -> way.array().stopFunction() == null)
                .map(way -> quoted(way.cells().name()))
                .toList();
        if (!charge.hasCutOff()) {
            return finding(Verdict.BREAKS, (unstoppable.isEmpty() ? onlyByRadio() : byNothing()) + SIGNAL_LOSS);
        }
        String cutOff = "The charging of " + name() + " is cut off by itself at " + fullV();
        return unstoppable.isEmpty()
                ? finding(Verdict.HOLDS, cutOff + ", and the radio can stop it." + SIGNAL_LOSS)
                : finding(
                        Verdict.TIGHT,
                        cutOff + ", but no function of the radio can stop the charging by " + listed(unstoppable) + "."
                                + SIGNAL_LOSS);
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
