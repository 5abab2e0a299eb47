package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.build.SolarArray.Connection;
import dev.ledgerwing.web.forms.Choices;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import org.jspecify.annotations.Nullable;

/** The fields of solar cells wired together. */
final class ArrayFields {

    private static final double TO_THE_RIGHT = 90;

    private ArrayFields() {}

    static void show(@Nullable SolarArray array, Shown fields) {
        fields.amount("maxPower", array == null ? null : array.maxPowerW())
                .amount("maxPowerVoltage", array == null ? null : array.maxPowerV())
                .amount("openCircuit", array == null ? null : array.openCircuitV())
                .amount("shortCircuit", array == null ? null : array.shortCircuitA())
                .amount("powerPerC", array == null ? null : array.powerPercentPerC())
                .amount("voltagePerC", array == null ? null : array.voltagePercentPerC())
                .amount("tilt", array == null ? (Double) 0.0 : (Double) array.tiltDeg())
                .amount("faces", array == null ? (Double) TO_THE_RIGHT : (Double) array.facesDeg())
                .tick("mirrored", array == null || array.mirrored())
                .text("connection", (array == null ? Connection.TRACKER : array.connection()).name())
                .amount("tracker", array == null ? null : array.trackerEfficiencyPercent())
                .text("stop", array == null ? "" : array.stopFunction());
    }

    /** The cells as typed; nothing where something is wrong. */
    static @Nullable SolarArray array(Entries entries, Build build) {
        Double maxPowerW = entries.amount("maxPower", PowerBounds.ARRAY_POWER);
        Double maxPowerV = entries.amount("maxPowerVoltage", PowerBounds.ARRAY_VOLTAGE);
        Double openCircuitV = entries.amount("openCircuit", PowerBounds.ARRAY_VOLTAGE);
        if (maxPowerV != null && openCircuitV != null && maxPowerV >= openCircuitV) {
            entries.trouble("maxPowerVoltage", "At the best point the voltage is below the open-circuit voltage.");
        }
        Double shortCircuitA = entries.amount("shortCircuit", PowerBounds.ARRAY_CURRENT);
        Double powerPerC = entries.amount("powerPerC", PowerBounds.PER_CELSIUS);
        Double voltagePerC = entries.amount("voltagePerC", PowerBounds.PER_CELSIUS);
        Double tilt = entries.amount("tilt", PowerBounds.TILT);
        Double faces = entries.amount("faces", PowerBounds.HEADING);
        Connection connection = entries.choice("connection", Connection.values());
        Double tracker = entries.amount("tracker", PowerBounds.SHARE);
        String stop =
                entries.code("stop", Choices.names(build.radio().functions()).keySet());
        return entries.areFine()
                ? new SolarArray(
                        maxPowerW,
                        maxPowerV,
                        openCircuitV,
                        shortCircuitA,
                        powerPerC,
                        voltagePerC,
                        tilt == null ? 0 : tilt,
                        faces == null ? 0 : faces,
                        entries.typed().isTicked("mirrored"),
                        connection,
                        tracker,
                        stop)
                : null;
    }
}
