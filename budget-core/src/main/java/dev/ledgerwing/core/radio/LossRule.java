package dev.ledgerwing.core.radio;

import static dev.ledgerwing.core.radio.RadioWords.quoted;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Criticality;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.LossRow.Happens;
import dev.ledgerwing.core.radio.LossRow.Reason;
import java.util.List;

/**
 * What becomes of each function on loss of signal. A throttle is to go to its low end, idle or off (a UK association's news item quoting
 * CAP 658); receivers left to hold the last command have led to fly-aways.
 */
record LossRule(Build build, StopFunctions stops, Happens happens) {

    private static final String LOW_END = RadioFunction.LOSS_PLACES.get(0);

    /** A row for every function that the radio commands, in the order of the record. */
    static List<LossRow> rows(Build build) {
        RadioLink link = build.radio().link();
        Happens happens = link == null ? Happens.NOT_KNOWN : new LossOfSignal(link).happens();
        LossRule rule = new LossRule(build, StopFunctions.of(build), happens);
        return build.radio().functions().stream()
                .filter(RadioFunction::needsChannel)
                .map(rule::row)
                .toList();
    }

    private LossRow row(RadioFunction function) {
        LossOutcome outcome = outcome(function);
        return new LossRow(
                function,
                function.onSignalLoss(),
                happens,
                outcome.goesTo(),
                outcome.reason(),
                outcome.verdict(),
                outcome.sentence());
    }

    private LossOutcome outcome(RadioFunction function) {
        String wanted = function.onSignalLoss();
        if (wanted == null) {
            return notSaid(function);
        }
        boolean drives = drives(function);
        return drives && !wanted.equals(LOW_END)
                ? LossOutcome.breaks(
                        Reason.THROTTLE,
                        quoted(function.name()) + " is to go to its " + wanted
                                + " on loss of signal: a throttle must go to its low end, idle or off.")
                : onChannel(function, wanted, drives);
    }

    private LossOutcome notSaid(RadioFunction function) {
        boolean asked =
                function.criticality() != Criticality.CONVENIENCE || stops.contains(function) || drives(function);
        String name = quoted(function.name());
        return asked
                ? LossOutcome.notKnown(Reason.NOT_SAID, "What " + name + " is to do on loss of signal is not said.")
                : LossOutcome.fine(null, "Nothing is asked of " + name + " on loss of signal.");
    }

    /** Presets that are only proposed are set nowhere: it is the recorded channels that count. */
    private LossOutcome onChannel(RadioFunction function, String wanted, boolean drives) {
        return build.radio().channels().stream()
                .filter(channel -> channel.functions().contains(function.code()))
                .findFirst()
                .map(channel -> new ChannelLoss(build, function, wanted, channel).outcome(happens, drives))
                .orElseGet(() -> withoutChannel(function, wanted, drives));
    }

    /** A receiver that holds moves nothing to where it is wanted, whatever the channel. */
    private LossOutcome withoutChannel(RadioFunction function, String wanted, boolean drives) {
        return happens == Happens.HOLD && drives
                ? LossOutcome.breaks(
                        Reason.THROTTLE,
                        "On loss of signal " + quoted(function.name()) + " is wanted at its " + wanted
                                + ", but the receiver holds the last command: the propulsion would run on.")
                : LossOutcome.notKnown(
                        Reason.NO_CHANNEL,
                        "What becomes of " + quoted(function.name())
                                + " on loss of signal is not known: no channel is recorded for it.");
    }

    /** A throttle is what commands a part that drives the airframe. */
    private boolean drives(RadioFunction function) {
        return function.kind() == Kind.PROPORTIONAL
                && build.lines().stream()
                        .anyMatch(line -> line.category() == Category.PROPULSION
                                && line.serves().contains(function.code()));
    }
}
