package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import java.util.List;

/**
 * What cannot be had together because functions share a channel.
 *
 * @param channel its number
 * @param phases codes of the phases in which it matters, in the order of the record
 * @param wanted what the pilot may want
 * @param with what comes with it; several states of one function are alternatives
 * @param sentence in words a pilot understands
 */
public record Coupling(
        int channel, List<String> phases, FunctionState wanted, List<FunctionState> with, String sentence) {

    public Coupling {
        phases = List.copyOf(phases);
        with = List.copyOf(with);
    }
}
