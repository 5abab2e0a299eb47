package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.RadioFunction.DecodedBy;
import org.jspecify.annotations.Nullable;

/** What a decoder can follow along the pulse: whether, and by which states, a function gets through sets of accepted ones. */
final class PulseLine {

    private PulseLine() {}

    /**
     * The states along the pulse.
     *
     * @param accepted for each level along the pulse the states that do, as bits
     * @return the number of a state for each level; null where the decoder can follow none
     */
    static int @Nullable [] through(int[] accepted, DecodedBy decoder) {
        return switch (decoder) {
            case TABLE -> anyState(accepted);
            case ONE_STEP -> oneStep(accepted);
            case SERVO -> climbing(accepted) != null ? climbing(accepted) : falling(accepted);
        };
    }

    /** Where it is open, a state stays as it was. */
    private static int @Nullable [] anyState(int[] accepted) {
        int[] states = new int[accepted.length];
        int last = 0;
        for (int i = 0; i < states.length; i++) {
            if (accepted[i] == 0) {
                return null;
            }
            last = i > 0 && ((accepted[i] >> last) & 1) != 0 ? last : Integer.numberOfTrailingZeros(accepted[i]);
            states[i] = last;
        }
        return states;
    }

    /** At most one change on the way: one state up to a level, another from there on. */
    private static int @Nullable [] oneStep(int[] accepted) {
        if (accepted.length == 0) {
            return accepted;
        }
        int[] after = new int[accepted.length + 1];
        after[accepted.length] = ~0;
        for (int i = accepted.length - 1; i >= 0; i--) {
            after[i] = after[i + 1] & accepted[i];
        }
        int before = ~0;
        for (int step = 1; step <= accepted.length; step++) {
            before &= accepted[step - 1];
            if (before != 0 && after[step] != 0) {
                return stepped(accepted.length, step, before, after[step]);
            }
        }
        return null;
    }

    private static int[] stepped(int length, int step, int before, int after) {
        int[] states = new int[length];
        for (int i = 0; i < length; i++) {
            states[i] = Integer.numberOfTrailingZeros(i < step ? before : after);
        }
        return states;
    }

    private static int @Nullable [] climbing(int[] accepted) {
        int[] states = new int[accepted.length];
        int last = -1;
        for (int i = 0; i < states.length; i++) {
            int left = accepted[i] & (~0 << (last + 1));
            if (left == 0) {
                return null;
            }
            last = Integer.numberOfTrailingZeros(left);
            states[i] = last;
        }
        return states;
    }

    private static int @Nullable [] falling(int[] accepted) {
        int[] states = new int[accepted.length];
        int last = Integer.SIZE - 1;
        for (int i = 0; i < states.length; i++) {
            int left = accepted[i] & ((1 << last) - 1);
            if (left == 0) {
                return null;
            }
            last = 31 - Integer.numberOfLeadingZeros(left);
            states[i] = last;
        }
        return states;
    }
}
