package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * What a function is to do when the signal is lost, and what it will do.
 *
 * @param wanted its {@code onSignalLoss}; null = not said
 * @param happens who decides where it goes then
 * @param goesTo the state or place it goes to; null = not known, or wherever it was
 * @param reason why the verdict is not better
 * @param sentence one plain sentence a builder understands
 */
public record LossRow(
        RadioFunction function,
        @Nullable String wanted,
        Happens happens,
        @Nullable String goesTo,
        Reason reason,
        Verdict verdict,
        String sentence) {

    /** What decides where a function goes. */
    public enum Happens {
        /** The receiver goes to what is stored in it. */
        PRESET,
        /** The receiver repeats the last command. */
        HOLD,
        /** The receiver sends nothing more, and what is behind it is left to itself. */
        SILENCE,
        /** The flight controller knows of the loss and acts. */
        BOARD,
        NOT_KNOWN
    }

    /** What a verdict rests on. */
    public enum Reason {
        NOTHING_WRONG,
        /** What the link does is not recorded: the same for every function. */
        LINK,
        /** Nobody has said what it is to do. */
        NOT_SAID,
        /** A throttle that is not to go to its low end. */
        THROTTLE,
        /** The receiver keeps it where it was. */
        HELD,
        NO_PULSES,
        NO_PRESET,
        /** The preset is another one than what is wanted. */
        OTHER_PRESET,
        /** No channel carries it. */
        NO_CHANNEL
    }

    /** Whether it goes by the preset of a channel, and that is wrong or not recorded. */
    boolean isOfThePreset() {
        return verdict != Verdict.HOLDS && happens == Happens.PRESET;
    }
}
