package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Build;
import java.util.List;

/**
 * Something to be recorded before needs can be held against what there is.
 *
 * @param address below the page's own
 * @param isDone whether it is there
 */
record FirstStep(String words, String why, String address, boolean isDone) {

    /** In the order in which they are best done. */
    static List<FirstStep> of(Build build) {
        return List.of(
                new FirstStep(
                        "What parts need",
                        "outputs, serial ports, addresses: part by part",
                        "needs",
                        build.lines().stream().anyMatch(NeedsForm::needsSomething)),
                new FirstStep(
                        "A flight controller",
                        "its outputs bank by bank and what else is free on it; enter several to compare them",
                        "boards/new",
                        !build.outputs().boards().isEmpty()),
                new FirstStep(
                        "Which one is aboard",
                        "and which part of the ledger it is",
                        "fitted",
                        build.outputs().fitted().board() != null),
                new FirstStep(
                        "What each output drives",
                        "which parts, at which rate, between which ends of the travel",
                        "assignments/new",
                        !build.outputs().assignments().isEmpty()));
    }
}
