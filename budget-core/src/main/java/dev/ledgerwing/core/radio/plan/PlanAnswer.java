package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import java.util.List;

/**
 * What the planner found.
 *
 * @param channels the plan where it fits, in the order of their numbers; else none
 * @param sharedPairs how many pairs of functions are on one channel
 * @param sharedWeight the sum over those pairs of the weights of both, a MISSION function weighing 3 and a CONVENIENCE one 1
 * @param missing what keeps the answer from being known: what is not recorded, or that there is too much to search
 */
public record PlanAnswer(
        Outcome outcome, List<Channel> channels, int sharedPairs, int sharedWeight, List<String> missing) {

    /** Whether there is a plan. */
    public enum Outcome {
        FITS,
        DOES_NOT_FIT,
        NOT_KNOWN
    }

    public PlanAnswer {
        channels = List.copyOf(channels);
        missing = List.copyOf(missing);
    }

    static PlanAnswer notKnown(List<String> missing) {
        return new PlanAnswer(Outcome.NOT_KNOWN, List.of(), 0, 0, missing);
    }

    static PlanAnswer doesNotFit() {
        return new PlanAnswer(Outcome.DOES_NOT_FIT, List.of(), 0, 0, List.of());
    }

    public boolean fits() {
        return outcome == Outcome.FITS;
    }
}
