package dev.ledgerwing.core.build;

/** What an output sends to the device behind it. */
public enum PulseKind {
    /** A pulse whose width says where to stand. */
    SERVO_PULSE,
    /** A number, bit by bit. */
    DATA,
    /** Current or none. */
    ON_OFF
}
