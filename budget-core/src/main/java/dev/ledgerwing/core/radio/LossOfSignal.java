package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.BoardLearnsBy;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.core.radio.LossRow.Happens;
import dev.ledgerwing.core.verdict.Verdict;

/** What a link does when its signal is lost, and whether whoever is to act can know of it. */
record LossOfSignal(RadioLink link) {

    /** A verdict and why. */
    record Judgement(Verdict verdict, String sentence) {}

    private static final String BOARD_ACTS = "The flight controller is to act on loss of signal, but ";

    /** Who decides where the functions go: a board that is not told leaves it to the receiver. */
    Happens happens() {
        if (link.actsOnLoss() == null) {
            return Happens.NOT_KNOWN;
        }
        if (link.actsOnLoss() == ActsOnLoss.RECEIVER) {
            return receiver();
        }
        return switch (boardKnows()) {
            case HOLDS, TIGHT -> Happens.BOARD;
            case UNKNOWN -> Happens.NOT_KNOWN;
            case BREAKS -> receiver();
        };
    }

    private Happens receiver() {
        return link.onLoss() == null
                ? Happens.NOT_KNOWN
                : switch (link.onLoss()) {
                    case HOLD -> Happens.HOLD;
                    case PRESET -> Happens.PRESET;
                    case NO_PULSES -> Happens.SILENCE;
                };
    }

    /** Whether a board that acts comes to know of the loss. */
    private Verdict boardKnows() {
        BoardLearnsBy by = link.boardLearnsBy();
        if (by == null) {
            return Verdict.UNKNOWN;
        }
        return switch (by) {
            case FLAG -> Verdict.HOLDS;
            case NOTHING -> Verdict.BREAKS;
            case SILENCE -> only(OnLoss.NO_PULSES);
            case OUT_OF_RANGE -> only(OnLoss.PRESET);
        };
    }

    private Verdict only(OnLoss telling) {
        return link.onLoss() == null ? Verdict.UNKNOWN : link.onLoss() == telling ? Verdict.HOLDS : Verdict.BREAKS;
    }

    Judgement judged() {
        if (link.actsOnLoss() == ActsOnLoss.BOARD && link.boardLearnsBy() == BoardLearnsBy.NOTHING) {
            return new Judgement(Verdict.BREAKS, BOARD_ACTS + "nothing tells it that the signal is lost.");
        }
        if (link.onLoss() == null) {
            return new Judgement(
                    Verdict.UNKNOWN,
                    "What the receiver does on loss of signal is not known: enter whether it holds the last command, goes to presets or sends nothing.");
        }
        if (link.actsOnLoss() == null) {
            return new Judgement(
                    Verdict.UNKNOWN,
                    "Who acts on loss of signal is not known: enter the receiver or the flight controller.");
        }
        return link.actsOnLoss() == ActsOnLoss.RECEIVER
                ? new Judgement(Verdict.HOLDS, "On loss of signal the receiver " + does(link.onLoss()) + ".")
                : board(link.onLoss());
    }

    private Judgement board(OnLoss onLoss) {
        BoardLearnsBy by = link.boardLearnsBy();
        if (by == null) {
            return new Judgement(Verdict.UNKNOWN, BOARD_ACTS + "how it learns of it is not known.");
        }
        if (boardKnows() == Verdict.HOLDS) {
            return new Judgement(
                    Verdict.HOLDS,
                    "On loss of signal the flight controller acts: it learns of it by " + word(by) + ".");
        }
        return new Judgement(Verdict.BREAKS, BOARD_ACTS + masked(by, onLoss));
    }

    private static String masked(BoardLearnsBy by, OnLoss onLoss) {
        String waits = "it waits for " + word(by) + ", and the receiver " + does(onLoss);
        return by == BoardLearnsBy.SILENCE
                ? waits + ": that looks like a live link and masks the loss."
                : waits + ": no channel ever goes there.";
    }

    private static String does(OnLoss onLoss) {
        return switch (onLoss) {
            case HOLD -> "holds the last command";
            case PRESET -> "goes to its presets";
            case NO_PULSES -> "sends nothing";
        };
    }

    private static String word(BoardLearnsBy by) {
        return switch (by) {
            case FLAG -> "a flag of the receiver";
            case SILENCE -> "silence";
            case OUT_OF_RANGE -> "a channel out of its range";
            case NOTHING -> "nothing";
        };
    }
}
