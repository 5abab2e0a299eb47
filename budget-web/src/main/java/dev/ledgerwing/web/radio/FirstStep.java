package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Radio;
import java.util.List;

/**
 * Something to be recorded before a plan can be found.
 *
 * @param address below the airframe's own
 * @param isDone whether it is there
 */
record FirstStep(String words, String why, String address, boolean isDone) {

    /** In the order in which they are best done. */
    static List<FirstStep> of(Build build) {
        Radio radio = build.radio();
        return List.of(
                new FirstStep(
                        "The link",
                        "how many channels it has, and what happens when its signal is lost",
                        "radio/link",
                        radio.link() != null),
                new FirstStep(
                        "The controls",
                        "sticks, sliders and switches of the transmitter",
                        "radio/controls",
                        !radio.controls().isEmpty()),
                new FirstStep(
                        "The functions",
                        "everything you command, its states in order and what hangs on it",
                        "radio/functions",
                        !radio.functions().isEmpty()),
                new FirstStep(
                        "The phases of a flight",
                        "power on first",
                        "power/phases",
                        !build.phases().isEmpty()),
                new FirstStep(
                        "What each phase asks",
                        "which states you must be able to choose then, and which do no harm",
                        "radio/demands",
                        radio.functions().stream()
                                .anyMatch(function -> !function.demandByPhase().isEmpty())));
    }
}
