package dev.ledgerwing.core.power.wire;

import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.build.WireRun.Routing;
import org.jspecify.annotations.Nullable;

/**
 * What a wire may carry for as long as it lasts, as published.
 *
 * @param continuousA amperes; null = not known
 * @param outsideTable whether it is not known because the table has no such gauge
 * @param source where the value is from, or why there is none; the end of a sentence, without its full stop
 */
public record Ampacity(@Nullable Double continuousA, boolean outsideTable, String source) {

    /** By gauge, routing and, in a bundle, insulation. */
    public static Ampacity of(WireRun run) {
        return run.routing() == Routing.BUNDLE ? BundledWire.ampacity(run) : FreeWire.ampacity(run);
    }

    public boolean isKnown() {
        return continuousA != null;
    }

    static Ampacity notKnown(String why) {
        return new Ampacity(null, false, why);
    }

    static Ampacity outside(int awg, String table) {
        return new Ampacity(null, true, WireGauge.of(awg).label() + " is outside of " + table);
    }
}
