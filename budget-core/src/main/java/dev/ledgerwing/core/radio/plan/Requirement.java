package dev.ledgerwing.core.radio.plan;

/** One combination that must be selectable in a phase, by the members of a group. */
final class Requirement {

    private final int phase;
    private final int[] demanded;
    private final int[] accepted;

    /**
     * @param demanded for each member the bit of the state demanded; 0 = open
     * @param accepted for each member the states that the position may have
     */
    Requirement(int phase, int[] demanded, int[] accepted) {
        this.phase = phase;
        this.demanded = demanded;
        this.accepted = accepted;
    }

    int phase() {
        return phase;
    }

    int demanded(int member) {
        return demanded[member];
    }

    int accepted(int member) {
        return accepted[member];
    }
}
