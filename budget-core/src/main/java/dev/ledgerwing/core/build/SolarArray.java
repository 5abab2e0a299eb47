package dev.ledgerwing.core.build;

import org.jspecify.annotations.Nullable;

/**
 * Solar cells wired together, by their values at standard conditions: 1000 W/m2, 25 °C cells, air mass 1.5. Null = not known.
 *
 * @param maxPowerW power at the best point, {@code maxPowerV} the voltage there
 * @param powerPercentPerC change of the power for each degree the cells are warmer; less than 0 for silicon
 * @param voltagePercentPerC the same of the open-circuit voltage
 * @param tiltDeg how far the cells lean from level, 0 to 90
 * @param facesDeg where they lean to, clockwise from straight ahead: 90 = to the right
 * @param mirrored whether half of them lean to the other side
 * @param trackerEfficiencyPercent of a tracker
 * @param stopFunction code of the radio function that can stop the charging
 */
public record SolarArray(
        @Nullable Double maxPowerW,
        @Nullable Double maxPowerV,
        @Nullable Double openCircuitV,
        @Nullable Double shortCircuitA,
        @Nullable Double powerPercentPerC,
        @Nullable Double voltagePercentPerC,
        double tiltDeg,
        double facesDeg,
        boolean mirrored,
        Connection connection,
        @Nullable Double trackerEfficiencyPercent,
        @Nullable String stopFunction)
        implements FieldGroup {

    /** How the cells reach the pack. */
    public enum Connection {
        /** Straight on: the pack's voltage is the cells' voltage. */
        DIRECT,
        /** Through a converter that keeps the cells at their best point. */
        TRACKER
    }

    public SolarArray {
        Check.within("maxPowerW", maxPowerW, 0.001, 100_000, " W");
        Check.within("maxPowerV", maxPowerV, 0.01, 1000, " V");
        Check.within("openCircuitV", openCircuitV, 0.01, 1000, " V");
        Check.within("shortCircuitA", shortCircuitA, 0.001, 1000, " A");
        Check.within("powerPercentPerC", powerPercentPerC, -5, 5, " %");
        Check.within("voltagePercentPerC", voltagePercentPerC, -5, 5, " %");
        Check.within("tiltDeg", tiltDeg, 0, 90, " degrees");
        Check.within("facesDeg", facesDeg, 0, 360, " degrees");
        Check.within("trackerEfficiencyPercent", trackerEfficiencyPercent, 1, 100, " %");
        Check.require(
                maxPowerV == null || openCircuitV == null || maxPowerV < openCircuitV,
                "maxPowerV must be less than openCircuitV");
    }

    SolarArray withStopFunction(@Nullable String changed) {
        return new SolarArray(
                maxPowerW,
                maxPowerV,
                openCircuitV,
                shortCircuitA,
                powerPercentPerC,
                voltagePercentPerC,
                tiltDeg,
                facesDeg,
                mirrored,
                connection,
                trackerEfficiencyPercent,
                changed);
    }
}
