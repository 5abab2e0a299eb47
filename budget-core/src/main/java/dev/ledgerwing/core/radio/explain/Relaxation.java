package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import org.jspecify.annotations.Nullable;

/** One concession by which everything fits, with what the pilot loses by it. */
public sealed interface Relaxation permits GiveUp, MorePositions, Mix, OffTheRadio {

    /** What is conceded. */
    enum Kind {
        /** Two states of two functions are never wanted together. */
        GIVE_UP,
        /** A switch with more positions. */
        MORE_POSITIONS,
        /** Two switches on one channel. */
        MIX,
        /** A function that something else than the radio commands. */
        OFF_THE_RADIO
    }

    Kind kind();

    /** Names it among those of one problem; stays the same while what it concedes stays the same. */
    String key();

    /** What is done. */
    String what();

    /** What the pilot loses, in plain words. */
    String loses();

    /** What has to be proven before; null = nothing beyond the loss. */
    default @Nullable String caution() {
        return null;
    }

    Loss loss();

    /**
     * The radio after it.
     *
     * @param by who accepts it; kept, with {@code why}, where the record keeps it
     */
    Radio in(Radio radio, String by, String why);

    /** The record after somebody has accepted it. The channels in force are planned again by themselves, not by this. */
    default Build accept(Build build, String by, String why) {
        return build.withRadio(in(build.radio(), by, why));
    }

    /** What is left to be planned, were it accepted. */
    default ChannelProblem in(ChannelProblem problem) {
        return new ChannelProblem(in(problem.radio(), "nobody yet", "to see whether it would fit"), problem.phases());
    }
}
