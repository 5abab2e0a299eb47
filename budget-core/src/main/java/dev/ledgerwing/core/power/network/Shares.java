package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Sharing;

/** How much of the whole current one of several elements side by side must be able to carry. */
final class Shares {

    /** Above an equal share, for contacts and wires that are tied together. */
    private static final double UNEVEN = 1.5;

    private Shares() {}

    static double ofOne(FeedElement element, int inUse) {
        if (inUse <= 1) {
            return 1;
        }
        if (element.sharing() == Sharing.OWN_BRANCH) {
            return 1.0 / inUse;
        }
        return switch (element.kind()) {
            case WIRE, CONNECTOR, SWITCH -> Math.min(1, UNEVEN / inUse);
            case FUSE, BREAKER, SENSOR, DIODE, REGULATOR, MOTOR_CONTROLLER -> 1;
        };
    }
}
