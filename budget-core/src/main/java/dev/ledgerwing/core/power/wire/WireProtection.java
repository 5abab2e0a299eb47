package dev.ledgerwing.core.power.wire;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The largest fuse and breaker that protect a copper wire: FAA AC 43.13-1B CHG 1, Table 11-3. Paragraph 11-48: the protector opens before
 * the rating of the wire is exceeded, or the ratings of all loads behind it together, whichever is least.
 *
 * @param awg the gauge of the table: of an odd gauge the next thinner one
 * @param breakerA and {@code fuseA} amperes; null = the table names none
 */
public record WireProtection(
        int awg, @Nullable Double breakerA, @Nullable Double fuseA) {

    public static final String SOURCE = "FAA AC 43.13-1B Table 11-3";

    /** From thick to thin. */
    private static final List<WireProtection> TABLE = List.of(
            new WireProtection(0, null, 150.0),
            new WireProtection(1, null, 150.0),
            new WireProtection(2, 125.0, 100.0),
            new WireProtection(4, 100.0, 70.0),
            new WireProtection(6, 80.0, 70.0),
            new WireProtection(8, 50.0, 50.0),
            new WireProtection(10, 40.0, 30.0),
            new WireProtection(12, 30.0, 20.0),
            new WireProtection(14, 20.0, 15.0),
            new WireProtection(16, 15.0, 10.0),
            new WireProtection(18, 10.0, 10.0),
            new WireProtection(20, 7.5, 5.0),
            new WireProtection(22, 5.0, 5.0));

    /** What protects a wire of this gauge; both null for one that is thicker or thinner than every one of the table. */
    public static WireProtection of(int awg) {
        WireProtection none = new WireProtection(awg, null, null);
        if (awg < TABLE.get(0).awg) {
            return none;
        }
        return TABLE.stream().filter(row -> row.awg >= awg).findFirst().orElse(none);
    }

    public boolean isKnown() {
        return breakerA != null || fuseA != null;
    }
}
