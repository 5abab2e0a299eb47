package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the parts that are aboard in the design load case need of the flight controller.
 *
 * @param lines the parts that need anything, in the order of the ledger
 */
public record PortTally(List<PartLine> lines) {

    public PortTally {
        lines = List.copyOf(lines);
    }

    public static PortTally of(Build build) {
        List<String> absent = build.designCase().absent();
        return new PortTally(build.lines().stream()
                .filter(line -> !absent.contains(line.id()))
                .filter(line -> Arrays.stream(PortKind.values()).anyMatch(kind -> kind.in(line.needs()) > 0))
                .toList());
    }

    public int need(PortKind kind) {
        return lines.stream().mapToInt(line -> kind.in(line.needs())).sum();
    }

    /** The parts that need one kind. */
    public List<PartLine> users(PortKind kind) {
        return lines.stream().filter(line -> kind.in(line.needs()) > 0).toList();
    }

    /** Names of the parts that answer to each bus address, by the address in upper case. */
    public Map<String, List<String>> byAddress() {
        Map<String, List<String>> byAddress = new TreeMap<>();
        for (PartLine line : lines) {
            for (String address : line.needs().i2cAddresses()) {
                byAddress
                        .computeIfAbsent(spelt(address), any -> new ArrayList<>())
                        .add(line.name());
            }
        }
        byAddress
                .values()
                .forEach(names -> names.sort(Comparator.naturalOrder())); // the order of the ledger says nothing
        return byAddress;
    }

    /** {@code 0x0D}, however it was written. */
    private static String spelt(String address) {
        String upper = address.strip().toUpperCase(Locale.ROOT);
        return upper.startsWith("0X") ? "0x" + upper.substring(2) : upper;
    }
}
