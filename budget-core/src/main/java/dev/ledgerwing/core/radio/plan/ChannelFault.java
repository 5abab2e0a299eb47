package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the recorded channels break the rule.
 *
 * @param channel its number; null where a function is on none
 * @param phase code of the phase in which it shows; null = in any
 * @param functions codes of the functions it is about
 * @param states the combination it is about: what is not reachable, or what is crossed
 * @param position the position it is about, counted from 1 along the pulse; null = no single one
 */
public record ChannelFault(
        Kind kind,
        @Nullable Integer channel,
        @Nullable String phase,
        List<String> functions,
        List<FunctionState> states,
        @Nullable Integer position) {

    /** What is wrong. */
    public enum Kind {
        /** A function that needs a channel is on none. */
        NOT_CARRIED,
        /** A function is on more than one channel. */
        CARRIED_TWICE,
        /** Two channels have one number. */
        NUMBER_TWICE,
        /** The link has fewer channels. */
        BEYOND_THE_LINK,
        /** Nothing moves the channel, or nothing that is there. */
        NO_CONTROL,
        /** A proportional function on a switch, or a switched one on a stick or a slider. */
        WRONG_CONTROL,
        /** One control drives two channels, be it as one of the switches of a mix. */
        CONTROL_TWICE,
        /** The states are not as many as the positions of the control. */
        WRONG_POSITIONS,
        /** A state that the function has not. */
        NO_SUCH_STATE,
        /** A function that never shares is with others. */
        NEVER_SHARES,
        /** A combination that must be selectable is on no position. */
        NOT_REACHABLE,
        /** Moving between two positions that are needed crosses one that does harm. */
        CROSSES,
        /** The decoder cannot follow the order of the states. */
        DECODER,
        /** The preset is not the state wanted when the signal is lost. */
        PRESET,
        /** What is wanted when the signal is lost cannot be had in this order, or is not what is held. */
        LOSS_STATE,
        /** Whether the states obey the rule is not known: there are too many combinations to search. */
        NOT_DECIDED
    }

    public ChannelFault {
        functions = List.copyOf(functions);
        states = List.copyOf(states);
    }

    static ChannelFault of(Kind kind, @Nullable Integer channel, List<String> functions) {
        return new ChannelFault(kind, channel, null, functions, List.of(), null);
    }
}
