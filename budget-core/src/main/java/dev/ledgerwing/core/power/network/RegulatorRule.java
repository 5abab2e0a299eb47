package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Whether every regulator gets the voltage that it needs, and no more than it bears. */
record RegulatorRule(NetworkStatement statement) {

    static final String INPUT = "power.regulator-input";

    Stream<Finding> findings() {
        return statement.elements().stream()
                .filter(each -> each.element().regulator() != null && each.isCarrying())
                .flatMap(each -> of(each, Objects.requireNonNull(each.element().regulator())).stream());
    }

    private static List<Finding> of(ElementLoad load, Regulator regulator) {
        List<Finding> findings = new ArrayList<>();
        String name = PowerWords.quoted(load.name());
        if (load.isInputTooLow()) {
            findings.add(Against.volts(
                            INPUT,
                            load.name(),
                            load.lowestInV(),
                            load.leastInputV(),
                            load.lowestInV() - load.leastInputV())
                    .finding(Verdict.BREAKS, name + tooLow(load, regulator)));
        } else if (isLeastUnknown(regulator, load.highestInV())) {
            findings.add(Against.nothing(INPUT, load.name())
                    .finding(
                            Verdict.UNKNOWN,
                            name
                                    + " has no dropout yet, nor a least input voltage above its output; its input falls to "
                                    + PowerWords.volts(load.lowestInV()) + "."));
        }
        Double maxInputV = regulator.maxInputV();
        if (maxInputV == null) {
            findings.add(Against.nothing(INPUT, load.name())
                    .finding(
                            Verdict.UNKNOWN,
                            name + " has no greatest input voltage yet; its input rises to "
                                    + PowerWords.volts(load.highestInV()) + "."));
        } else if (load.isInputTooHigh()) {
            findings.add(Against.volts(INPUT, load.name(), load.highestInV(), maxInputV, maxInputV - load.highestInV())
                    .finding(
                            Verdict.BREAKS,
                            name + " bears no more than " + PowerWords.volts(maxInputV) + "; full packs give it "
                                    + PowerWords.volts(load.highestInV()) + "."));
        }
        return findings;
    }

    /** A linear one that works from little does not hold its output from little: only the dropout tells from what on it does. */
    private static boolean isLeastUnknown(Regulator regulator, double highestInputV) {
        Double minInputV = regulator.minInputV();
        if (regulator.dropoutV() != null) {
            return false;
        }
        return minInputV == null || (minInputV <= regulator.outputV() && !Conversion.raises(regulator, highestInputV));
    }

    private static String tooLow(ElementLoad load, Regulator regulator) {
        Double minInputV = regulator.minInputV();
        String falls = "’s input falls to " + PowerWords.volts(load.lowestInV());
        if (minInputV != null && load.lowestInV() < minInputV) {
            return falls + ", below the " + PowerWords.volts(minInputV)
                    + " it needs to work at all: nobody knows what it gives then.";
        }
        return falls + "; it needs " + PowerWords.volts(load.leastInputV()) + " to give "
                + PowerWords.volts(regulator.outputV()) + ": below that its output follows the input down.";
    }
}
