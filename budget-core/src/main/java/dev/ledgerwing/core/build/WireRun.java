package dev.ledgerwing.core.build;

import dev.ledgerwing.core.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Wires from one place to another, and back.
 *
 * @param awg American wire gauge; 0 is 1/0, -3 is 4/0
 * @param length one way
 * @param conductors wires in the run: the pair out and back, and signal wires besides; it decides the mass, current flows in one pair
 * @param insulationC highest temperature of the insulation; null = not known
 */
public record WireRun(
        int awg,
        Length length,
        int conductors,
        Routing routing,
        @Nullable Double insulationC) {

    /** How the wires lie. */
    public enum Routing {
        FREE_AIR,
        BUNDLE
    }

    public WireRun {
        Check.within("awg", awg, -3, 40);
        Check.extent("lengthMm", length);
        Check.within("conductors", conductors, 2, 100);
        Check.within("insulationC", insulationC, 40, 600, " °C");
    }
}
