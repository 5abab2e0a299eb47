package dev.ledgerwing.core.radio.plan;

/**
 * How much searching one question is worth, in steps and not in time, so that the same question has the same answer everywhere.
 * When it is used up the answer is that it is not known.
 */
final class Effort {

    static final int MOST_STEPS = 3_000_000;

    /** What is remembered takes memory, which is to be bounded too. */
    static final int TO_REMEMBER = 10;

    private final int[] left;

    private Effort(int steps) {
        left = new int[] {steps};
    }

    static Effort whole() {
        return new Effort(MOST_STEPS);
    }

    /** Leaves no more than so many steps. */
    void keep(int steps) {
        left[0] = Math.min(left[0], steps);
    }

    void spend(int steps) {
        left[0] -= steps;
        if (left[0] < 0) {
            left[0] = 0;
            throw new TooManyCombinations();
        }
    }

    /** Thrown out of a search that cannot be finished with the steps there are. */
    static final class TooManyCombinations extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private TooManyCombinations() {
            super("too many combinations to decide", null, false, false);
        }
    }
}
