package dev.ledgerwing.core.outputs;

import java.util.List;

/**
 * More parts answer to one address than there are buses to keep them apart.
 *
 * @param parts names of the parts
 */
public record AddressClash(String address, List<String> parts, int buses) {

    public AddressClash {
        parts = List.copyOf(parts);
    }

    static List<AddressClash> of(PortTally need, int buses) {
        return need.byAddress().entrySet().stream()
                .filter(each -> each.getValue().size() > buses)
                .map(each -> new AddressClash(each.getKey(), each.getValue(), buses))
                .toList();
    }

    /** {@code Compass and Airspeed sensor both answer to 0x28}. */
    public String sentence() {
        String first = String.join(", ", parts.subList(0, parts.size() - 1));
        String names = parts.size() == 1 ? parts.get(0) : first + " and " + parts.get(parts.size() - 1);
        String held = buses == 0
                ? "there is no I²C bus"
                : buses == 1 ? "there is one I²C bus" : "there are " + buses + " I²C buses";
        return parts.size() == 1
                ? names + " answers to " + address + " on an I²C bus, and " + held + "."
                : names + (parts.size() == 2 ? " both" : " all") + " answer to " + address + ", and " + held
                        + " to keep them apart.";
    }
}
