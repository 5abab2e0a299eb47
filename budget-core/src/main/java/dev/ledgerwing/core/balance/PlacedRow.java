package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.LinePlace.Size;
import dev.ledgerwing.core.build.Moments;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.mass.MassRow;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A row of a load case and where it sits there. All its pieces sit at the one station, but those of a mirrored line: half of them at
 * +y and half at -y.
 *
 * @param station its centre of mass, of a mirrored line on the centre line; null = not known
 * @param stationUncertainty standard uncertainty of the station along each axis
 * @param mirroredAtY null = not mirrored
 * @param size box of one piece; null = not known
 */
public record PlacedRow(
        MassRow row,
        @Nullable Station station,
        Length stationUncertainty,
        @Nullable Length mirroredAtY,
        @Nullable Size size) {

    /** Its mass in a state; null = not known. */
    public @Nullable Mass mass(MassState state) {
        return state == MassState.BASIC ? row.basic() : row.predicted();
    }

    /** Whether it takes part in the CG: mass and station are known. */
    public boolean isPlaced() {
        return row.isKnown() && station != null;
    }

    /** Whether it has a mass, but nobody has said where. */
    public boolean lacksStation() {
        Mass basic = row.basic();
        return station == null && basic != null && basic.mg() > 0;
    }

    /** Mass and first moments; nothing where one of them is not known. */
    public BalanceSum sum(MassState state) {
        Mass mass = mass(state);
        return mass == null || station == null ? BalanceSum.ZERO : new BalanceSum(mass, Moments.of(mass, station));
    }

    /** Where the outermost of its pieces sits along an axis, on the side of the lesser numbers; it is placed. */
    double leastMm(Axis axis) {
        return axis.mm(Objects.requireNonNull(station)) - sideMm(axis);
    }

    double mostMm(Axis axis) {
        return axis.mm(Objects.requireNonNull(station)) + sideMm(axis);
    }

    /** How far its two halves lie off their common centre. */
    double sideMm(Axis axis) {
        return axis == Axis.Y && mirroredAtY != null ? Math.abs(mirroredAtY.mm()) : 0;
    }
}
