package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.BoardLearnsBy;
import org.jspecify.annotations.Nullable;

/** What the loss of the signal asks of the channels. */
enum LossRule {
    /** Nothing: a board that is told acts by itself, or what the receiver does is not known. */
    NOTHING,
    /** The last command stays: every position selectable in a phase must be bearable. */
    HOLD,
    /** The receiver jumps to a stored level, which needs a place along the pulse. */
    PRESET;

    static LossRule of(@Nullable RadioLink link) {
        if (link == null || link.onLoss() == null || boardActs(link)) {
            return NOTHING;
        }
        return switch (link.onLoss()) {
            case HOLD -> HOLD;
            case PRESET -> PRESET;
            case NO_PULSES -> NOTHING;
        };
    }

    private static boolean boardActs(RadioLink link) {
        return link.actsOnLoss() == ActsOnLoss.BOARD
                && link.boardLearnsBy() != null
                && link.boardLearnsBy() != BoardLearnsBy.NOTHING;
    }
}
