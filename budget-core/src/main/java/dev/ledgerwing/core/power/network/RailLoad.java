package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Rail;
import org.jspecify.annotations.Nullable;

/**
 * What all pieces of one line draw from one rail.
 *
 * @param index which of the line's loads it is, from 0
 * @param rail what it hangs on; null = nothing yet
 */
public record RailLoad(PartLine line, int index, @Nullable Rail rail) {

    public ElectricalLoad load() {
        return line.electrical().get(index);
    }

    /** Typical current of all pieces in amperes; null = not known. */
    public @Nullable Double typicalA() {
        return ofAllPieces(load().typicalA());
    }

    /** Peak current of all pieces in amperes, never below the typical one; null = not known. */
    public @Nullable Double peakA() {
        Double peak = load().peakA();
        Double typical = load().typicalA();
        return ofAllPieces(peak == null || typical == null ? peak : Double.valueOf(Math.max(peak, typical)));
    }

    private @Nullable Double ofAllPieces(@Nullable Double ofOne) {
        return ofOne == null ? null : ofOne * line.quantity();
    }

    /** Least voltage it works at, of its own or else of its rail; null = not known. */
    public @Nullable Double minV() {
        Double own = load().minV();
        return own != null || rail == null ? own : rail.minV();
    }

    /** Greatest voltage it bears, of its own or else of its rail; null = not known. */
    public @Nullable Double maxV() {
        Double own = load().maxV();
        return own != null || rail == null ? own : rail.maxV();
    }

    /** Whether it draws the same watts at any voltage, and it is known how many. */
    boolean isConstantPower() {
        return load().draws() == ElectricalLoad.Draws.CONSTANT_POWER && nominalV() > 0;
    }

    /** Whether the watts of a constant power cannot be told, because its rail has no nominal voltage. */
    public boolean lacksNominalV() {
        return load().draws() == ElectricalLoad.Draws.CONSTANT_POWER && nominalV() == 0;
    }

    private double nominalV() {
        Double nominal = rail == null ? null : rail.nominalV();
        return nominal == null ? 0 : nominal;
    }

    /** Watts of a constant power: its amperes are those at the nominal voltage of the rail, taken from the rail, its leads included. */
    double watts(double amperes) {
        return amperes * nominalV();
    }
}
