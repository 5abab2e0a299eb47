package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.FeedElement.SwitchedLoad;

/**
 * How much more a switch must be rated for than it carries, by what it switches: rating needed = continuous current x factor. FAA AC
 * 43.13-1B (change 1), table 11-4, which has a column for 28 V and one for 12 V systems.
 */
final class SwitchDerating {

    /** From here up the 28 V column is used. Ledgerwing's own choice; from no publication. */
    static final double HIGH_FROM_V = 18;

    private SwitchDerating() {}

    static double factor(SwitchedLoad load, double systemV) {
        boolean isHigh = systemV >= HIGH_FROM_V;
        return switch (load) {
            case LAMP -> isHigh ? 8 : 5;
            case INDUCTIVE -> isHigh ? 4 : 2;
            case RESISTIVE -> isHigh ? 2 : 1;
            case MOTOR -> isHigh ? 3 : 2;
        };
    }
}
