package dev.ledgerwing.core.build;

import java.util.List;

/** What one line needs of the flight controller, all its pieces together. */
public record PortNeeds(int outputs, int serialPorts, List<String> i2cAddresses, int canNodes, int analogInputs) {

    public static final PortNeeds NONE = new PortNeeds(0, 0, List.of(), 0, 0);

    public PortNeeds {
        i2cAddresses = List.copyOf(i2cAddresses);
        Check.within("outputs", outputs, 0, 100);
        Check.within("serialPorts", serialPorts, 0, 100);
        Check.within("canNodes", canNodes, 0, 100);
        Check.within("analogInputs", analogInputs, 0, 100);
        i2cAddresses.forEach(address -> Check.text("i2cAddresses", address, 10));
    }
}
