package dev.ledgerwing.core.radio;

import static dev.ledgerwing.core.radio.RadioWords.quoted;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.core.radio.LossRow.Happens;
import dev.ledgerwing.core.radio.LossRow.Reason;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What becomes of a function on its channel when the signal is lost, and whether that is what is wanted. */
record ChannelLoss(Build build, RadioFunction function, String wanted, Channel channel) {

    private static final String HELD = ", but the receiver holds the last command";

    /**
     * What becomes of it.
     *
     * @param drives whether it is the throttle
     */
    LossOutcome outcome(Happens happens, boolean drives) {
        return switch (happens) {
            case NOT_KNOWN -> LossOutcome.notKnown(Reason.LINK, isWanted() + "; what becomes of it then is not known.");
            case BOARD ->
                LossOutcome.fine(
                        wanted,
                        "On loss of signal the flight controller is to take " + name() + " to " + to(wanted) + ".");
            case SILENCE ->
                LossOutcome.notKnown(
                        Reason.NO_PULSES,
                        isWanted() + ", but the receiver sends nothing: what it does by itself is not known.");
            case HOLD ->
                drives
                        ? LossOutcome.breaks(Reason.THROTTLE, isWanted() + HELD + ": the propulsion would run on.")
                        : held();
            case PRESET -> preset(drives ? Reason.THROTTLE : Reason.OTHER_PRESET);
        };
    }

    private LossOutcome held() {
        if (function.kind() == Kind.PROPORTIONAL) {
            return LossOutcome.breaks(Reason.HELD, isWanted() + HELD + ", wherever the stick was.");
        }
        Optional<LossOutcome> left =
                build.phases().stream().flatMap(phase -> leftIn(phase).stream()).findFirst();
        return left.orElseGet(() -> alwaysThere()
                ? LossOutcome.fine(wanted, "On loss of signal " + name() + " stays " + to(wanted) + ".")
                : new LossOutcome(
                        Verdict.TIGHT, Reason.HELD, null, isWanted() + HELD + ": it must be left there in flight."));
    }

    private Optional<LossOutcome> leftIn(Phase phase) {
        return function.demandIn(phase.code()).mustSelect().stream()
                .filter(state -> !state.equals(wanted))
                .findFirst()
                .map(state -> LossOutcome.breaks(
                        Reason.HELD, isWanted() + HELD + ", and in " + phase.name() + " that can be " + state + "."));
    }

    private boolean alwaysThere() {
        return carried()
                .map(each -> !each.states().isEmpty() && each.states().stream().allMatch(wanted::equals))
                .orElse(false);
    }

    private LossOutcome preset(Reason other) {
        String preset = presetState();
        if (preset == null) {
            return LossOutcome.notKnown(
                    Reason.NO_PRESET, isWanted() + ", but its preset on " + channel.name() + " is not recorded.");
        }
        return preset.equals(wanted)
                ? LossOutcome.fine(
                        preset,
                        "On loss of signal " + name() + " goes to " + to(preset) + " by the preset of " + channel.name()
                                + ".")
                : LossOutcome.breaks(
                                other,
                                isWanted() + ", but the preset of " + channel.name() + " takes it to " + to(preset)
                                        + ".")
                        .goingTo(preset);
    }

    private @Nullable String presetState() {
        return carried().map(Carried::presetState).orElse(null);
    }

    private Optional<Carried> carried() {
        return channel.carries().stream()
                .filter(each -> each.function().equals(function.code()))
                .findFirst();
    }

    private String name() {
        return quoted(function.name());
    }

    /** {@code On loss of signal “Throttle” is wanted at its low end}. */
    private String isWanted() {
        String at = function.kind() == Kind.PROPORTIONAL ? "at its " : "";
        return "On loss of signal " + name() + " is wanted " + at + wanted;
    }

    /** {@code off}, {@code its low end}. */
    private String to(String state) {
        return function.kind() == Kind.PROPORTIONAL ? "its " + state : state;
    }
}
