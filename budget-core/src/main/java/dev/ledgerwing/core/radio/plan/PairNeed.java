package dev.ledgerwing.core.radio.plan;

import org.jspecify.annotations.Nullable;

/**
 * What two switched functions need to share a channel.
 *
 * @param positions the fewest positions of one switch that carry both; null = none up to six does, or that is not known
 * @param why why they never share; NONE where they can
 */
public record PairNeed(
        String first, String second, @Nullable Integer positions, Never why) {

    /** Why two functions never share a channel. */
    public enum Never {
        /** They can. */
        NONE,
        /** One of them is for the flight itself. */
        FLIGHT,
        /** One of them cannot be taken back. */
        IRREVERSIBLE,
        /** They could, but for the states wanted when the signal is lost. */
        LOSS_OF_SIGNAL,
        /** No order along the pulse that the decoders can follow and that crosses nothing forbidden. */
        NO_ORDER,
        /** More combinations are demanded than six positions give. */
        CLASH,
        /** Not known: there are too many combinations to search. */
        NOT_DECIDED
    }
}
