package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.outputs.PortKind;
import java.util.ArrayList;
import java.util.List;

/**
 * What one part takes up on the flight controller.
 *
 * @param note the same in words, for a narrow page
 * @param isAboard whether it is aboard as designed; a part that is not takes up nothing
 */
record PartPorts(
        String line,
        String name,
        String outputs,
        String serial,
        String addresses,
        String can,
        String analog,
        String note,
        boolean isAboard) {

    /** The parts that need something, in the order of the ledger. */
    static List<PartPorts> of(Build build) {
        List<String> absent = build.designCase().absent();
        return build.lines().stream()
                .filter(NeedsForm::needsSomething)
                .map(line -> row(line, !absent.contains(line.id())))
                .toList();
    }

    private static PartPorts row(PartLine line, boolean isAboard) {
        PortNeeds needs = line.needs();
        return new PartPorts(
                line.id(),
                line.name(),
                count(needs.outputs()),
                count(needs.serialPorts()),
                String.join(", ", needs.i2cAddresses()),
                count(needs.canNodes()),
                count(needs.analogInputs()),
                note(needs),
                isAboard);
    }

    private static String count(int ports) {
        return ports == 0 ? "" : Integer.toString(ports);
    }

    private static String note(PortNeeds needs) {
        List<String> words = new ArrayList<>();
        add(words, PortKind.OUTPUT, needs.outputs());
        add(words, PortKind.SERIAL_PORT, needs.serialPorts());
        if (!needs.i2cAddresses().isEmpty()) {
            words.add("I²C " + String.join(", ", needs.i2cAddresses()));
        }
        add(words, PortKind.CAN_NODE, needs.canNodes());
        add(words, PortKind.ANALOG_INPUT, needs.analogInputs());
        return String.join(", ", words);
    }

    private static void add(List<String> words, PortKind kind, int count) {
        if (count > 0) {
            words.add(kind.counted(count));
        }
    }
}
