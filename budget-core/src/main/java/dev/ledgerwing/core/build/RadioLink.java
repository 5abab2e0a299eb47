package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * The radio link from the pilot's transmitter to the airframe.
 *
 * @param channels how many channels it carries
 * @param onLoss what the receiver does when it loses the signal; null = not known
 * @param actsOnLoss who brings the functions to a safe state then; null = not known
 * @param boardLearnsBy how a board that acts is told of the loss; null = not known
 * @param train the frame, where the channels come as pulses one behind the other; null = they do not
 */
public record RadioLink(
        int channels,
        @Nullable OnLoss onLoss,
        @Nullable ActsOnLoss actsOnLoss,
        @Nullable BoardLearnsBy boardLearnsBy,
        @Nullable PulseTrain train) {

    public static final int MOST_CHANNELS = 32;

    /** What the receiver does: keep the last command, go to a stored one, or fall silent. */
    public enum OnLoss {
        HOLD,
        PRESET,
        NO_PULSES
    }

    /** Who acts: the receiver by what it sends, or the flight controller by itself. */
    public enum ActsOnLoss {
        RECEIVER,
        BOARD
    }

    /** By what a flight controller knows that the signal is lost. */
    public enum BoardLearnsBy {
        /** The receiver says so among its data. */
        FLAG,
        /** Nothing comes any more. */
        SILENCE,
        /** A channel goes where no control can take it. */
        OUT_OF_RANGE,
        NOTHING
    }

    public RadioLink {
        Check.within("channels", channels, 1, MOST_CHANNELS);
    }

    /** A link of which only the number of channels is known. */
    public static RadioLink of(int channels) {
        return new RadioLink(channels, null, null, null, null);
    }
}
