package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import dev.ledgerwing.core.build.RadioLink.OnLoss;

/** What drawings of the radio call what is recorded of it. */
final class RadioWords {

    private RadioWords() {}

    /** {@code Camera, on board}, and of what the radio commands its name alone. */
    static String told(RadioFunction function) {
        OtherwiseBy by = function.otherwiseBy();
        return function.name() + (by == null ? "" : by == OtherwiseBy.DATA_LINK ? ", by data link" : ", on board");
    }

    /** What a receiver does when it loses the signal, as the end of a sentence. */
    static String of(OnLoss onLoss) {
        return switch (onLoss) {
            case HOLD -> "keeps the last command";
            case PRESET -> "goes to its presets";
            case NO_PULSES -> "falls silent";
        };
    }
}
