package dev.ledgerwing.core.radio.explain;

import java.util.List;

/**
 * One part of why the functions do not fit.
 *
 * @param causes what the sentence tells of; each of them is needed for the whole not to fit
 * @param sentence in the words of the builder: names, no codes
 */
public record Reason(Kind kind, List<Cause> causes, String sentence) {

    /** What the sentence is about. */
    public enum Kind {
        /** Functions that have their channels to themselves and only leave fewer for the others. */
        TAKES_CHANNELS,
        /** The same where there are fewer switches than channels. */
        TAKES_SWITCHES,
        /** More functions that need a channel of their own than there are channels. */
        OWN_CHANNELS,
        /** More functions that move in proportion than there are sticks and sliders. */
        NO_STICK_LEFT,
        /** More functions that need a switch of their own than there are switches. */
        NO_SWITCH_LEFT,
        /** No control can do what is asked of these functions, though each could have one. */
        TOO_FEW_POSITIONS,
        /** Functions that would have to share the channels or the switches that are left. */
        HAVE_TO_SHARE,
        /** What a phase asks of them. */
        PHASE,
        DECODER,
        SIGNAL_LOSS,
        PIN,
        PHASE_ORDER
    }

    public Reason {
        causes = List.copyOf(causes);
    }
}
