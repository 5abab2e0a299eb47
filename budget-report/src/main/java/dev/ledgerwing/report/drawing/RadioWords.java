package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.BoardLearnsBy;
import dev.ledgerwing.core.build.RadioLink.OnLoss;

/** What drawings and sheets call what is recorded of the radio. */
public final class RadioWords {

    private RadioWords() {}

    /** {@code Camera, on board}, and of what the radio commands its name alone. */
    public static String told(RadioFunction function) {
        OtherwiseBy by = function.otherwiseBy();
        return function.name() + (by == null ? "" : ", " + of(by));
    }

    public static String of(OtherwiseBy by) {
        return by == OtherwiseBy.DATA_LINK ? "by data link" : "on board";
    }

    /** What a receiver does when it loses the signal, as the end of a sentence. */
    public static String of(OnLoss onLoss) {
        return switch (onLoss) {
            case HOLD -> "keeps the last command";
            case PRESET -> "goes to its presets";
            case NO_PULSES -> "falls silent";
        };
    }

    public static String of(ActsOnLoss acts) {
        return acts == ActsOnLoss.RECEIVER ? "the receiver" : "the flight controller";
    }

    /** How a flight controller is told of the loss. */
    public static String of(BoardLearnsBy by) {
        return switch (by) {
            case FLAG -> "by a flag among the receiver’s data";
            case SILENCE -> "by silence";
            case OUT_OF_RANGE -> "by a channel out of its range";
            case NOTHING -> "by nothing";
        };
    }
}
