package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.PortNeeds;
import org.jspecify.annotations.Nullable;

/** What runs out on a flight controller. */
public enum PortKind {
    OUTPUT("output", "outputs"),
    SERIAL_PORT("serial port", "serial ports"),
    BUS_ADDRESS("address on the I²C bus", "addresses on the I²C bus"),
    CAN_NODE("node on the CAN bus", "nodes on the CAN bus"),
    ANALOG_INPUT("analogue input", "analogue inputs");

    private final String word;
    private final String plural;

    PortKind(String word, String plural) {
        this.word = word;
        this.plural = plural;
    }

    /** {@code 1 output}, {@code 3 outputs}. */
    public String counted(int count) {
        return count + " " + (count == 1 ? word : plural);
    }

    /** The word for many. */
    public String plural() {
        return plural;
    }

    /** How many of them a part needs, all its pieces together. */
    int in(PortNeeds needs) {
        return switch (this) {
            case OUTPUT -> needs.outputs();
            case SERIAL_PORT -> needs.serialPorts();
            case BUS_ADDRESS -> needs.i2cAddresses().size();
            case CAN_NODE -> needs.canNodes();
            case ANALOG_INPUT -> needs.analogInputs();
        };
    }

    /** How many a board has; a bus takes any number of nodes, so of buses it is how many there are. Null = not known. */
    @Nullable
    Integer of(Board board) {
        return switch (this) {
            case OUTPUT -> board.banks().isEmpty() ? null : (Integer) board.outputs();
            case SERIAL_PORT -> board.serialPorts();
            case BUS_ADDRESS -> board.i2cBuses();
            case CAN_NODE -> board.canBuses();
            case ANALOG_INPUT -> board.analogInputs();
        };
    }

    /** Whether many parts share one of them. */
    public boolean isBus() {
        return this == BUS_ADDRESS || this == CAN_NODE;
    }
}
