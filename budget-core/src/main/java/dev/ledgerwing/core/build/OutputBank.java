package dev.ledgerwing.core.build;

import java.util.HashSet;
import java.util.List;

/**
 * Outputs of a flight controller that share one timer: one rate and one kind of pulse for all of them.
 *
 * @param outputNumbers as they are printed on the board
 * @param ratesHz the rates it can be set to; none = not known
 * @param pulses the kinds of pulse it can give; none = not known
 */
public record OutputBank(String name, List<Integer> outputNumbers, List<Double> ratesHz, List<PulseKind> pulses) {

    public OutputBank {
        outputNumbers = List.copyOf(outputNumbers);
        ratesHz = List.copyOf(ratesHz);
        pulses = List.copyOf(pulses);
        Check.name("name", name);
        Check.within("outputNumbers", outputNumbers.size(), 1, 64);
        outputNumbers.forEach(number -> Check.within("outputNumbers", number, 1, 999));
        Check.require(
                new HashSet<>(outputNumbers).size() == outputNumbers.size(),
                "outputNumbers must differ from each other");
        ratesHz.forEach(rate -> Check.within("ratesHz", rate, 1, 100_000, " Hz"));
    }
}
